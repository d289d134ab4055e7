// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.bars;

import java.util.List;

/**
 * What is needed and what there is.
 *
 * @param kinds  kinds of bars
 * @param onHand bars of each stock
 * @param demand pieces of each part
 */
public record BarProblem(List<BarKind> kinds, int[] onHand, int[] demand) {

    public BarProblem {
        kinds = List.copyOf(kinds);
    }

    double cost(Pattern p) {
        BarKind kind = kinds.get(p.kind());
        return kind.cost() + kind.costPerUnit() * kind.used(p.counts());
    }

    /** Whether each part fits some bar that is on hand. */
    boolean everyPartFits() {
        for (int j = 0; j < demand.length; j++) {
            int part = j;
            if (demand[j] > 0 && kinds.stream().noneMatch(k -> k.takes(part) && onHand[k.stock()] > 0)) {
                return false;
            }
        }
        return true;
    }
}
