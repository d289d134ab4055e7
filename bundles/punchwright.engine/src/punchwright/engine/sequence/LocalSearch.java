// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

/**
 * 2-opt and Or-opt (segments of up to three nodes, either way round) with neighbour lists and a queue of nodes worth a
 * look. Each improving move is made at once.
 */
final class LocalSearch {

    private static final double LEAST_GAIN = 1e-9;
    private static final int LONGEST_MOVED = 3;

    private final Tour.Metric metric;
    private final int[][] neighbours;
    private final TourArray tour;
    private final int[] partner;
    private final int[] queue;
    private final boolean[] queued;
    private int head;
    private int waiting;
    private long work;
    private double gain;

    LocalSearch(Tour.Metric metric, int[][] neighbours, TourArray tour, int[] partner) {
        this.metric = metric;
        this.neighbours = neighbours;
        this.tour = tour;
        this.partner = partner;
        this.queue = new int[tour.size()];
        this.queued = new boolean[tour.size()];
    }

    long work() {
        return work;
    }

    void count(int looks) {
        work += looks;
    }

    void queueAll() {
        for (int node : tour.order()) {
            push(node);
        }
    }

    /** Improves until no queued node has an improving move; returns the change of length, not above 0. */
    double run() {
        double change = 0;
        while (waiting > 0) {
            int node = pop();
            while (tour.size() >= 5 && improve(node)) {
                change -= gain;
            }
        }
        return change;
    }

    /** Exchanges the neighbouring segments after {@code a} up to {@code s2} and after {@code s2} up to {@code c}. */
    double swapSegments(int a, int s2, int c) {
        int s1 = tour.next(a);
        int b = tour.next(s2);
        int d = tour.next(c);
        double change = cost(a, b) + cost(c, s1) + cost(s2, d) - cost(a, s1) - cost(s2, b) - cost(c, d);
        moveSegment(a, s1, s2, b, c, d, false);
        push(a, b, c, d);
        push(s1);
        push(s2);
        return change;
    }

    private boolean improve(int node) {
        return twoOpt(node, true) || twoOpt(node, false) || orOpt(node, true) || orOpt(node, false);
    }

    private boolean twoOpt(int a, boolean forward) {
        int b = after(a, forward);
        if (partner[a] == b) {
            return false;
        }
        double ab = cost(a, b);
        for (int c : neighbours[a]) {
            double g = ab - cost(a, c);
            if (g <= LEAST_GAIN) {
                return false;
            }
            int d = after(c, forward);
            if (c != b && d != a && partner[c] != d && g + cost(c, d) - cost(b, d) > LEAST_GAIN) {
                gain = g + cost(c, d) - cost(b, d);
                tour.twoOpt(a, b, c, d);
                push(a, b, c, d);
                return true;
            }
        }
        return false;
    }

    /** Moves a segment that starts at {@code s1} and goes on in a direction to a place beside a neighbour of {@code s1}. */
    private boolean orOpt(int s1, boolean forward) {
        int a = after(s1, !forward);
        if (partner[s1] == a) {
            return false;
        }
        double as1 = cost(a, s1);
        int s2 = s1;
        for (int length = 1; length <= LONGEST_MOVED; length++) {
            int b = after(s2, forward);
            if (b == a) {
                return false;
            }
            if (partner[s2] != b && insert(a, s1, s2, b, as1, forward)) {
                return true;
            }
            s2 = b;
        }
        return false;
    }

    private boolean insert(int a, int s1, int s2, int b, double as1, boolean forward) {
        double removed = as1 + cost(s2, b) - cost(a, b);
        for (int c : neighbours[s1]) {
            double g = removed - cost(s1, c);
            if (g <= LEAST_GAIN) {
                return false;
            }
            if (inSegment(c, s1, s2, forward)) {
                continue;
            }
            if (place(a, s1, s2, b, c, g, forward, true) || place(a, s1, s2, b, c, g, forward, false)) {
                return true;
            }
        }
        return false;
    }

    /** Tries to put the segment between {@code c} and the node after or before it, with s1 beside c. */
    private boolean place(int a, int s1, int s2, int b, int c, double g, boolean forward, boolean afterC) {
        int d = after(c, afterC == forward);
        if (d == s1 || d == s2 || partner[c] == d) {
            return false;
        }
        double total = g - cost(s2, d) + cost(c, d);
        if (total <= LEAST_GAIN) {
            return false;
        }
        gain = total;
        if (afterC) {
            moveSegment(a, s1, s2, b, c, d, false);
        } else {
            moveSegment(a, s1, s2, b, d, c, true);
        }
        push(a, b, c, d);
        push(s1);
        push(s2);
        return true;
    }

    /** Given the way a, s1..s2, b..c, d: makes it a, b..c, s1..s2, d, or with s2..s1 when reversed. */
    private void moveSegment(int a, int s1, int s2, int b, int c, int d, boolean reversed) {
        tour.twoOpt(a, s1, c, d);
        tour.twoOpt(a, c, b, s2);
        if (!reversed && s1 != s2) {
            tour.twoOpt(c, s2, s1, d);
        }
    }

    private boolean inSegment(int node, int s1, int s2, boolean forward) {
        return forward ? tour.between(s1, node, s2) : tour.between(s2, node, s1);
    }

    private int after(int node, boolean forward) {
        return forward ? tour.next(node) : tour.previous(node);
    }

    private double cost(int a, int b) {
        work++;
        return metric.cost(a, b);
    }

    private void push(int a, int b, int c, int d) {
        push(a);
        push(b);
        push(c);
        push(d);
    }

    private void push(int node) {
        if (!queued[node]) {
            queued[node] = true;
            queue[(head + waiting++) % queue.length] = node;
        }
    }

    private int pop() {
        int node = queue[head];
        head = head + 1 == queue.length ? 0 : head + 1;
        waiting--;
        queued[node] = false;
        return node;
    }
}
