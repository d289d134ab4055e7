// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import punchwright.engine.holding.SheetHit;
import punchwright.engine.press.AxisMotion;
import punchwright.engine.press.Machine;

/**
 * The order of the runs of one tool as a travelling path that starts where the tool stands and ends anywhere.
 *
 * <p>A run of one hit gives one node, a longer one two nodes, its first and its last hit, that stay neighbours; one node
 * more, at no cost from everywhere, closes the path to a tour and is tied to the start where there is one.
 */
final class HitOrder {

    private static final int NEIGHBOURS = 7;

    /** One end of a run, or the start (no run). */
    private record Node(SheetHit hit, HitRun run) {
    }

    private final Machine machine;
    private final RunMetric metric;
    private final List<Node> nodes = new ArrayList<>();
    private final int[] partner;
    private final int depot;
    private final boolean started;

    private HitOrder(Machine machine, List<HitRun> runs, SheetHit from) {
        this.machine = machine;
        this.metric = new RunMetric(machine);
        for (HitRun run : runs) {
            nodes.add(new Node(run.first(), run));
            if (run.hits().size() > 1) {
                nodes.add(new Node(run.last(), run));
            }
        }
        this.started = from != null;
        if (started) {
            nodes.add(new Node(from, null));
        }
        this.depot = nodes.size();
        this.partner = partners();
    }

    private int[] partners() {
        int[] p = new int[depot + 1];
        Arrays.fill(p, -1);
        for (int i = 1; i < depot; i++) {
            if (nodes.get(i).run == nodes.get(i - 1).run) {
                p[i] = i - 1;
                p[i - 1] = i;
            }
        }
        if (started) {
            p[depot] = depot - 1;
            p[depot - 1] = depot;
        }
        return p;
    }

    /**
     * @param from       hit before the first run; null when the path may start anywhere
     * @param workLimit  largest number of costs looked at
     * @return the runs in order, each as it is or reversed
     */
    static List<HitRun> order(Machine machine, List<HitRun> runs, SheetHit from, long workLimit, long seed) {
        HitOrder order = new HitOrder(machine, runs, from);
        return order.path(order.tour(workLimit, seed));
    }

    private int[] tour(long workLimit, long seed) {
        return ClosedTour.of(this::cost, neighbours(), partner, workLimit, seed, () -> false);
    }

    private double cost(int a, int b) {
        if (a == depot || b == depot || partner[a] == b) {
            return 0;
        }
        return metric.seconds(nodes.get(a).hit, nodes.get(b).hit);
    }

    private int[][] neighbours() {
        double[] x = nodes.stream().mapToDouble(n -> n.hit.at().x()).toArray();
        double[] y = nodes.stream().mapToDouble(n -> n.hit.at().y()).toArray();
        int[][] lists = Arrays.copyOf(new PointIndex(x, y).around(NEIGHBOURS, 1, this::moveS), depot + 1);
        lists[depot] = new int[0];
        for (int i = 0; i < depot; i++) {
            int node = i;
            lists[i] = Arrays.stream(lists[i]).filter(o -> o != partner[node]).boxed()
                    .sorted((a, b) -> Double.compare(cost(node, a), cost(node, b))).mapToInt(Integer::intValue).toArray();
        }
        return lists;
    }

    private double moveS(double dx, double dy) {
        return AxisMotion.seconds(machine, dx, dy);
    }

    /** Reads the tour from the depot on, start first where there is one. */
    private List<HitRun> path(int[] tour) {
        int n = tour.length;
        int at = 0;
        while (tour[at] != depot) {
            at++;
        }
        int way = started && tour[(at + 1) % n] != depot - 1 ? -1 : 1;
        List<HitRun> path = new ArrayList<>();
        for (int i = started ? 2 : 1; i < n; i++) {
            int node = tour[Math.floorMod(at + way * i, n)];
            HitRun run = nodes.get(node).run;
            path.add(nodes.get(node).hit == run.first() ? run : run.reversed());
            i += partner[node] >= 0 ? 1 : 0;
        }
        return path;
    }
}
