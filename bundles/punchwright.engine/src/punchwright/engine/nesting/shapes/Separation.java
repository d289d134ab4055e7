// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.SplittableRandom;

import punchwright.engine.nesting.boxes.Work;

/** Moves overlapping pieces, one after the other, each to its best place, raising the weights of overlaps that stay. */
final class Separation {

    private final Field field;
    private final Work work;
    private final SplittableRandom random;
    private final PlaceSearch search;
    private final int patience;
    private final int strikes;

    Separation(Field field, Work work, SplittableRandom random, int patience, int strikes) {
        this.field = field;
        this.work = work;
        this.random = random;
        this.patience = patience;
        this.strikes = strikes;
        this.search = new PlaceSearch(field, random, 40, 20);
    }

    /** True when nothing overlaps any more; else the field holds the least overlap seen. */
    boolean run(double untilShare) {
        double best = field.total();
        Arrangement bestSeen = field.arrangement();
        field.resetWeights();
        for (int strike = 0; strike < strikes && best > 0; strike++) {
            double before = best;
            int idle = 0;
            while (idle < patience && best > 0 && !work.spent(untilShare)) {
                pass();
                double total = field.total();
                idle = total < 0.98 * best ? 0 : idle + 1;
                if (total < best) {
                    best = total;
                    bestSeen = field.arrangement();
                }
                field.reweigh();
            }
            if (best > 0) {
                field.set(bestSeen);
            }
            strike = best < 0.98 * before ? -1 : strike;
            if (work.spent(untilShare)) {
                break;
            }
        }
        return best == 0;
    }

    private void pass() {
        int n = field.size();
        int[] order = new int[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            if (field.bad(i)) {
                order[count++] = i;
            }
        }
        for (int k = count - 1; k > 0; k--) {
            int o = random.nextInt(k + 1);
            int keep = order[k];
            order[k] = order[o];
            order[o] = keep;
        }
        for (int k = 0; k < count; k++) {
            int i = order[k];
            double cost = field.cost(i);
            if (cost > 0 && search.find(i, cost)) {
                field.move(i, search.bestTurn, search.bestX, search.bestY);
            }
        }
    }
}
