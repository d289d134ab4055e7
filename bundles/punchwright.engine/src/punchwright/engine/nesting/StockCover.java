// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * How many sheets of each offer make a quantity of one part at the least price: a bounded covering knapsack, solved exactly
 * by dynamic programming over the pieces (Kellerer, Pferschy, Pisinger, Knapsack Problems, Springer 2004, section 7.1:
 * bounded items are split into powers of two). Equal prices: fewer sheets of area.
 */
final class StockCover {

    private record Lot(int offer, int sheets, int pieces, double price, double areaMm2) {
    }

    private final int[] capacity;
    private final Stock stock;

    StockCover(int[] capacity, Stock stock) {
        this.capacity = capacity;
        this.stock = stock;
    }

    /** Sheets of each offer for at least {@code pieces}; everything that takes the part where the stock is short. */
    int[] sheets(int pieces) {
        int[] onHand = new int[capacity.length];
        long total = 0;
        for (int i = 0; i < onHand.length; i++) {
            onHand[i] = capacity[i] == 0 ? 0 : Math.min(stock.offer(i).quantity(), ceilDiv(pieces, capacity[i]));
            total += (long) onHand[i] * capacity[i];
        }
        return total <= pieces ? onHand : cover(pieces, lots(onHand));
    }

    private static int ceilDiv(int a, int b) {
        return (a + b - 1) / b;
    }

    private List<Lot> lots(int[] onHand) {
        List<Lot> lots = new ArrayList<>();
        for (int i = 0; i < onHand.length; i++) {
            int left = onHand[i];
            for (int n = 1; left > 0; n *= 2) {
                int sheets = Math.min(n, left);
                lots.add(new Lot(i, sheets, (int) Math.min(Integer.MAX_VALUE, (long) sheets * capacity[i]),
                        sheets * stock.offer(i).price(), sheets * stock.areaMm2(i)));
                left -= sheets;
            }
        }
        return lots;
    }

    private int[] cover(int pieces, List<Lot> lots) {
        double[] price = new double[pieces + 1];
        double[] area = new double[pieces + 1];
        java.util.Arrays.fill(price, 1, pieces + 1, Double.POSITIVE_INFINITY);
        List<BitSet> taken = new ArrayList<>();
        for (Lot lot : lots) {
            taken.add(improve(lot, price, area));
        }
        int[] sheets = new int[capacity.length];
        int left = pieces;
        for (int k = lots.size() - 1; k >= 0; k--) {
            if (taken.get(k).get(left)) {
                sheets[lots.get(k).offer] += lots.get(k).sheets;
                left = Math.max(0, left - lots.get(k).pieces);
            }
        }
        return sheets;
    }

    private static BitSet improve(Lot lot, double[] price, double[] area) {
        BitSet taken = new BitSet(price.length);
        for (int n = price.length - 1; n >= 1; n--) {
            int before = Math.max(0, n - lot.pieces);
            double p = price[before] + lot.price;
            double a = area[before] + lot.areaMm2;
            if (p < price[n] - 1e-9 || p < price[n] + 1e-9 && a < area[n] - 1e-9) {
                price[n] = p;
                area[n] = a;
                taken.set(n);
            }
        }
        return taken;
    }
}
