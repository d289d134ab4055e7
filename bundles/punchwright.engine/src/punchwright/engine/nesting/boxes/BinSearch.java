// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.boxes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Boxes into as few equal bins as the work allows.
 *
 * <p>Every box must fit the empty bin at one of its turns. Same input, seed and work limit, same result.
 */
public final class BinSearch {

    /** Growth of the weight of a box that stays in the pool; 1.001 did best of 1.0002 to 1.01 on 500 instances. */
    private static final double GAIN = 1.001;

    private final BoxSet boxes;
    private final int length;
    private final int width;
    private final Work work;
    private final BinFill fill;
    private final SplittableRandom random;
    private final double[] weight;
    private final double[] key;
    private final Bin[] trial = {new Bin(), new Bin(), new Bin()};
    private boolean[] placed = new boolean[16];

    private BinSearch(BoxSet boxes, int length, int width, Work work, long seed) {
        this.boxes = boxes;
        this.length = length;
        this.width = width;
        this.work = work;
        this.fill = new BinFill(boxes, length, width, work);
        this.random = new SplittableRandom(seed);
        this.weight = new double[boxes.size()];
        this.key = new double[boxes.size()];
    }

    /**
     * Packs all boxes.
     *
     * @param bound a lower bound on the bins, where the search stops
     * @throws IllegalArgumentException when a box does not fit the empty bin; the message names its number and size
     */
    public static List<Bin> pack(BoxSet boxes, int length, int width, int bound, Work work, long seed) {
        for (int i = 0; i < boxes.size(); i++) {
            boolean fits = false;
            for (int t = 0; t < boxes.turns(i); t++) {
                fits |= boxes.lengths()[i][t] <= length && boxes.widths()[i][t] <= width;
            }
            if (!fits) {
                throw new IllegalArgumentException("box " + i + " of " + boxes.lengths()[i][0] + " x " + boxes.widths()[i][0]
                        + " does not fit a bin of " + length + " x " + width);
            }
        }
        BinSearch search = new BinSearch(boxes, length, width, work, seed);
        return search.run(search.first(bound), bound);
    }

    /** The given valid packing, or one with fewer bins where the work finds it. */
    public static List<Bin> fewer(BoxSet boxes, List<Bin> start, int length, int width, int bound, Work work, long seed) {
        return new BinSearch(boxes, length, width, work, seed).run(start, bound);
    }

    private List<Bin> run(List<Bin> start, int bound) {
        List<Bin> best = start;
        while (best.size() > bound && !work.spent()) {
            List<Bin> fewer = oneLess(best);
            best = fewer == null ? best : fewer;
        }
        return best;
    }

    /** The best of plain packings: boxes by area, longer side, and one of the sides, each under every rule. */
    private List<Bin> first(int bound) {
        List<Comparator<Integer>> orders = List.of(Comparator.comparingLong(b -> -boxes.area(b)),
                Comparator.comparingInt(b -> -Math.max(boxes.lengths()[b][0], boxes.widths()[b][0])),
                Comparator.comparingInt(b -> -boxes.widths()[b][0]), Comparator.comparingInt(b -> -boxes.lengths()[b][0]));
        List<Bin> best = null;
        for (Comparator<Integer> order : orders) {
            int[] sorted = IntStream.range(0, boxes.size()).boxed().sorted(order).mapToInt(Integer::intValue).toArray();
            for (int rule = 0; rule < BinFill.RULES && (best == null || best.size() > bound); rule++) {
                List<Bin> bins = greedy(sorted, rule);
                best = best == null || bins.size() < best.size() ? bins : best;
            }
        }
        return best;
    }

    private List<Bin> greedy(int[] order, int rule) {
        List<Bin> bins = new ArrayList<>();
        int[] left = order.clone();
        int count = left.length;
        while (count > 0) {
            Bin bin = new Bin();
            room(count);
            fill.fill(bin, left, count, placed, rule);
            bins.add(bin);
            count = keepUnplaced(left, count);
        }
        return bins;
    }

    private int keepUnplaced(int[] order, int count) {
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (!placed[i]) {
                order[kept++] = order[i];
            }
        }
        return kept;
    }

    private void room(int count) {
        if (placed.length < count) {
            placed = new boolean[2 * count];
        }
    }

    /** A packing with one bin less, or null when the work ran out first. */
    private List<Bin> oneLess(List<Bin> bins) {
        List<Bin> open = new ArrayList<>(bins);
        open.sort(Comparator.comparingLong(b -> -b.area(boxes)));
        Bin dissolved = open.remove(open.size() - 1);
        int[] pool = new int[boxes.size()];
        int pooled = 0;
        for (int i = 0; i < dissolved.size(); i++) {
            pool[pooled++] = dissolved.box(i);
        }
        for (int i = 0; i < weight.length; i++) {
            weight[i] = boxes.area(i);
        }
        if (open.isEmpty()) {
            return null;
        }
        while (pooled > 0 && !work.spent()) {
            pooled = step(open, pool, pooled);
        }
        return pooled == 0 ? open : null;
    }

    /** Empties one to three bins and fills them again with their boxes and the pool; keeps what leaves no more weight out. */
    private int step(List<Bin> open, int[] pool, int pooled) {
        int chosen = Math.min(open.size(), 1 + (random.nextInt(100) < 60 ? 0 : random.nextInt(100) < 75 ? 1 : 2));
        int[] which = distinct(chosen, open.size());
        int[] all = new int[boxes.size()];
        int count = 0;
        double before = 0;
        for (int i = 0; i < pooled; i++) {
            all[count++] = pool[i];
            before += weight[pool[i]];
        }
        for (int w : which) {
            Bin bin = open.get(w);
            for (int i = 0; i < bin.size(); i++) {
                all[count++] = bin.box(i);
            }
        }
        order(all, count, pooled);
        int left = count;
        for (int c = 0; c < chosen; c++) {
            room(left);
            fill.fill(trial[c], all, left, placed, random.nextInt(BinFill.RULES));
            left = keepUnplaced(all, left);
        }
        double after = 0;
        for (int i = 0; i < left; i++) {
            after += weight[all[i]];
        }
        if (after <= before) {
            for (int c = 0; c < chosen; c++) {
                open.set(which[c], trial[c].copy());
            }
            System.arraycopy(all, 0, pool, 0, left);
            return left;
        }
        for (int i = 0; i < pooled; i++) {
            weight[pool[i]] *= GAIN;
        }
        return pooled;
    }

    /** Random order that prefers large and, at times, long-waiting boxes. */
    private void order(int[] all, int count, int pooled) {
        double noise = random.nextDouble();
        boolean poolFirst = random.nextInt(4) == 0;
        int kind = random.nextInt(4);
        for (int i = 0; i < count; i++) {
            int b = all[i];
            double size = switch (kind) {
                case 0 -> (double) boxes.area(b) / ((double) length * width);
                case 1 -> (double) Math.max(boxes.lengths()[b][0], boxes.widths()[b][0]) / Math.max(length, width);
                case 2 -> (double) boxes.widths()[b][0] / width;
                default -> (double) boxes.lengths()[b][0] / length;
            };
            key[b] = size * (1 - noise) + noise * random.nextDouble() + (poolFirst && i < pooled ? 1 : 0);
        }
        sort(all, count);
    }

    private void sort(int[] all, int count) {
        for (int i = 1; i < count; i++) {
            int b = all[i];
            int j = i - 1;
            while (j >= 0 && key[all[j]] < key[b]) {
                all[j + 1] = all[j];
                j--;
            }
            all[j + 1] = b;
        }
    }

    private int[] distinct(int count, int from) {
        int[] out = new int[count];
        for (int i = 0; i < count; i++) {
            int v;
            do {
                v = random.nextInt(from);
            } while (contains(out, i, v));
            out[i] = v;
        }
        return out;
    }

    private static boolean contains(int[] a, int count, int v) {
        for (int i = 0; i < count; i++) {
            if (a[i] == v) {
                return true;
            }
        }
        return false;
    }
}
