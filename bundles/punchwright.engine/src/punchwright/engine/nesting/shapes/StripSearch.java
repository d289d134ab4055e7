// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

import punchwright.engine.nesting.boxes.Work;

/**
 * Pieces in a strip of fixed width, as short as the work allows.
 *
 * <p>From a first arrangement the strip is cut shorter step by step; what then overlaps is separated. Where that fails, a near
 * miss is disturbed by exchanging large pieces and tried again a little longer; at last the best arrangement is pressed together
 * in ever smaller steps.
 */
public final class StripSearch {

    /** A piece at its place: turn, and the reference point of its polygon. */
    public record Placed(int piece, int turn, double angleDeg, double x, double y) {
    }

    /** All pieces, no two overlapping by more than the hair, inside {@code length} x the strip's width. */
    public record Strip(double length, List<Placed> placed) {
    }

    private static final double EXPLORE_SHARE = 0.7;
    private static final double WIDEST_STEP = 0.02;
    private static final double NARROWEST_STEP = 0.002;
    private static final int MOST_EXCHANGES = 5;

    private final Piece[] pieces;
    private final Work work;
    private final SplittableRandom random;
    private final Field field;
    private Arrangement best;

    private StripSearch(List<Piece> pieces, double width, Work work, long seed) {
        this.pieces = pieces.toArray(Piece[]::new);
        this.work = work;
        this.random = new SplittableRandom(seed);
        double longest = pieces.stream().mapToDouble(p -> Arrays.stream(p.turns).mapToDouble(Outline::length).max().orElse(0))
                .sum();
        this.field = new Field(this.pieces, longest, width, work);
    }

    /**
     * Packs all pieces.
     *
     * @throws IllegalArgumentException when a piece is wider than the strip at every angle; the message names it
     */
    public static Strip pack(List<Piece> pieces, double width, Work work, long seed) {
        for (int i = 0; i < pieces.size(); i++) {
            if (Arrays.stream(pieces.get(i).turns).allMatch(t -> t.width() > width)) {
                throw new IllegalArgumentException("piece " + i + " of width " + pieces.get(i).turns[0].width()
                        + " does not fit a strip of width " + width);
            }
        }
        return new StripSearch(pieces, width, work, seed).run();
    }

    private Strip run() {
        new FirstFill(field, random).fill();
        best = field.arrangement();
        explore();
        compress();
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < pieces.length; i++) {
            placed.add(new Placed(i, best.turn()[i], pieces[i].angleDeg(best.turn()[i]), best.x()[i], best.y()[i]));
        }
        return new Strip(best.length(), placed);
    }

    private double shortest() {
        double area = Arrays.stream(pieces).mapToDouble(p -> p.area).sum();
        double longest = Arrays.stream(pieces).mapToDouble(p -> Arrays.stream(p.turns)
                .filter(t -> t.width() <= field.width).mapToDouble(Outline::length).min().orElse(0)).max().orElse(0);
        return Math.max(area / field.width, longest);
    }

    /** Wider steps after success, narrower after failure; the longer nothing succeeds, the more is exchanged. */
    private void explore() {
        Separation separation = new Separation(field, work, random, 50, 2);
        double step = WIDEST_STEP;
        int fails = 0;
        List<Arrangement> misses = new ArrayList<>();
        List<Double> missed = new ArrayList<>();
        double least = shortest();
        shorten(Math.max(least, best.length() * (1 - step)));
        while (!work.spent(EXPLORE_SHARE) && best.length() > least * (1 + 1e-9)) {
            if (separation.run(EXPLORE_SHARE)) {
                best = field.arrangement();
                misses.clear();
                missed.clear();
                fails = 0;
                step = Math.min(WIDEST_STEP, step * 1.5);
                shorten(Math.max(least, best.length() * (1 - step)));
            } else {
                fails++;
                step = Math.max(NARROWEST_STEP, step / 2);
                keepMiss(misses, missed);
                field.set(misses.get(pick(misses.size())));
                shorten(Math.max(least, best.length() * (1 - step)));
                int exchanges = 1 + random.nextInt(Math.min(fails, MOST_EXCHANGES));
                for (int k = 0; k < exchanges; k++) {
                    disturb();
                }
            }
        }
    }

    /** Misses in order of their overlap, at most ten. */
    private void keepMiss(List<Arrangement> misses, List<Double> missed) {
        double total = field.total();
        int at = 0;
        while (at < missed.size() && missed.get(at) <= total) {
            at++;
        }
        misses.add(at, field.arrangement());
        missed.add(at, total);
        if (misses.size() > 10) {
            misses.remove(10);
            missed.remove(10);
        }
    }

    /** Nearer misses more often. */
    private int pick(int size) {
        double u = Math.abs(random.nextDouble() + random.nextDouble() - 1);
        return Math.min(size - 1, (int) (u * u * size));
    }

    /** Exchanges two large pieces of different kind. */
    private void disturb() {
        Integer[] order = new Integer[pieces.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble((Integer i) -> -pieces[i].hullArea).thenComparingInt(i -> i));
        int large = Math.max(2, pieces.length / 2);
        for (int attempt = 0; attempt < 20; attempt++) {
            int a = order[random.nextInt(Math.min(large, pieces.length))];
            int b = order[random.nextInt(Math.min(large, pieces.length))];
            if (a != b && pieces[a] != pieces[b]) {
                double ax = centerX(a);
                double ay = centerY(a);
                double bx = centerX(b);
                double by = centerY(b);
                centre(a, bx, by);
                centre(b, ax, ay);
                return;
            }
        }
    }

    private double centerX(int i) {
        Outline o = pieces[i].turns[field.turn[i]];
        return field.x[i] + (o.minX + o.maxX) / 2;
    }

    private double centerY(int i) {
        Outline o = pieces[i].turns[field.turn[i]];
        return field.y[i] + (o.minY + o.maxY) / 2;
    }

    private void centre(int i, double cx, double cy) {
        Outline o = pieces[i].turns[field.turn[i]];
        double x = Math.max(-o.minX, Math.min(field.length - o.maxX, cx - (o.minX + o.maxX) / 2));
        double y = Math.max(-o.minY, Math.min(field.width - o.maxY, cy - (o.minY + o.maxY) / 2));
        field.move(i, field.turn[i], x, y);
    }

    /** Cuts the strip at a random place by the difference, or opens it there: what lies beyond moves with it. */
    private void shorten(double length) {
        double by = field.length - length;
        double cut = random.nextDouble() * field.length;
        Arrangement a = field.arrangement();
        double[] x = a.x();
        for (int i = 0; i < pieces.length; i++) {
            if (centerX(i) > cut) {
                x[i] -= by;
            }
        }
        field.set(new Arrangement(length, a.turn(), x, a.y()));
    }

    private void compress() {
        double least = shortest();
        Separation separation = new Separation(field, work, random, 20, 1);
        while (!work.spent() && best.length() > least * (1 + 1e-9)) {
            double progress = Math.max(0, Math.min(1, (work.share() - EXPLORE_SHARE) / (1 - EXPLORE_SHARE)));
            double step = 0.002 * Math.pow(0.02, progress);
            field.set(best);
            shorten(Math.max(least, best.length() * (1 - step)));
            if (separation.run(1)) {
                best = field.arrangement();
            }
        }
    }
}
