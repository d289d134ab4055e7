// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * How many sheets of each offer make a quantity of one part at the least cost: a bounded covering knapsack, solved exactly
 * by dynamic programming over the pieces (Kellerer, Pferschy, Pisinger, Knapsack Problems, Springer 2004, section 7.1:
 * bounded items are split into powers of two). Equal costs: fewer sheets of area. Where the last sheet costs less with fewer
 * pieces on it, every number of pieces on it is tried.
 */
final class StockCover {

    /** What a sheet of an offer costs with some pieces on it. */
    interface PartCost {

        double of(int offer, int pieces);
    }

    /**
     * Sheets of each offer.
     *
     * @param last offer whose last sheet takes what the others leave, or -1 where that is all the same
     */
    record Cover(int[] sheets, int last) {
    }

    private record Lot(int offer, int sheets, int pieces, double cost, double areaMm2) {
    }

    private record Table(double[] cost, double[] area, List<Lot> lots, List<BitSet> taken) {
    }

    private final int[] capacity;
    private final Stock stock;
    private final IntToDoubleFunction fullCost;

    /** Sheets at their price with handling. */
    StockCover(int[] capacity, Stock stock) {
        this(capacity, stock, i -> stock.offer(i).price() + stock.costs().job().costs().handlingPerSheet());
    }

    /** Sheets at the cost of a full one. */
    StockCover(int[] capacity, Stock stock, IntToDoubleFunction fullCost) {
        this.capacity = capacity;
        this.stock = stock;
        this.fullCost = fullCost;
    }

    /** Sheets of each offer for at least {@code pieces}; everything that takes the part where the stock is short. */
    int[] sheets(int pieces) {
        int[] onHand = onHand(pieces);
        return total(onHand) <= pieces ? onHand : read(table(pieces, onHand), pieces);
    }

    /** The same with the cost of the last sheet by the pieces on it. */
    Cover cheapest(int pieces, PartCost cost) {
        int[] onHand = onHand(pieces);
        if (total(onHand) <= pieces) {
            return new Cover(onHand, -1);
        }
        double best = Double.POSITIVE_INFINITY;
        double bestArea = 0;
        Cover cover = new Cover(sheets(pieces), -1);
        for (int last = 0; last < capacity.length; last++) {
            if (onHand[last] > 0) {
                int[] others = onHand.clone();
                others[last]--;
                Table table = table(pieces, others);
                for (int k = 1; k <= Math.min(capacity[last], pieces); k++) {
                    double c = table.cost[pieces - k] + cost.of(last, k);
                    double a = table.area[pieces - k] + stock.areaMm2(last);
                    if (c < best - 1e-9 || c < best + 1e-9 && a < bestArea - 1e-9) {
                        best = c;
                        bestArea = a;
                        int[] sheets = read(table, pieces - k);
                        sheets[last]++;
                        cover = new Cover(sheets, last);
                    }
                }
            }
        }
        return cover;
    }

    private int[] onHand(int pieces) {
        int[] onHand = new int[capacity.length];
        for (int i = 0; i < onHand.length; i++) {
            onHand[i] = capacity[i] == 0 ? 0 : Math.min(stock.offer(i).quantity(), (pieces + capacity[i] - 1) / capacity[i]);
        }
        return onHand;
    }

    private long total(int[] sheets) {
        long total = 0;
        for (int i = 0; i < sheets.length; i++) {
            total += (long) sheets[i] * capacity[i];
        }
        return total;
    }

    private List<Lot> lots(int[] onHand) {
        List<Lot> lots = new ArrayList<>();
        for (int i = 0; i < onHand.length; i++) {
            int left = onHand[i];
            for (int n = 1; left > 0; n *= 2) {
                int sheets = Math.min(n, left);
                lots.add(new Lot(i, sheets, (int) Math.min(Integer.MAX_VALUE, (long) sheets * capacity[i]),
                        sheets * fullCost.applyAsDouble(i), sheets * stock.areaMm2(i)));
                left -= sheets;
            }
        }
        return lots;
    }

    private Table table(int pieces, int[] onHand) {
        double[] cost = new double[pieces + 1];
        double[] area = new double[pieces + 1];
        Arrays.fill(cost, 1, pieces + 1, Double.POSITIVE_INFINITY);
        List<BitSet> taken = new ArrayList<>();
        List<Lot> lots = lots(onHand);
        for (Lot lot : lots) {
            taken.add(improve(lot, cost, area));
        }
        return new Table(cost, area, lots, taken);
    }

    private int[] read(Table table, int pieces) {
        int[] sheets = new int[capacity.length];
        int left = pieces;
        for (int k = table.lots.size() - 1; k >= 0; k--) {
            if (table.taken.get(k).get(left)) {
                sheets[table.lots.get(k).offer] += table.lots.get(k).sheets;
                left = Math.max(0, left - table.lots.get(k).pieces);
            }
        }
        return sheets;
    }

    private static BitSet improve(Lot lot, double[] cost, double[] area) {
        BitSet taken = new BitSet(cost.length);
        for (int n = cost.length - 1; n >= 1; n--) {
            int before = Math.max(0, n - lot.pieces);
            double c = cost[before] + lot.cost;
            double a = area[before] + lot.areaMm2;
            if (c < cost[n] - 1e-9 || c < cost[n] + 1e-9 && a < area[n] - 1e-9) {
                cost[n] = c;
                area[n] = a;
                taken.set(n);
            }
        }
        return taken;
    }
}
