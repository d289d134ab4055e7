// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.util.List;

/**
 * One line of the order: a part, or an assembly with its parts counted through all levels.
 *
 * @param id             stable id
 * @param label          what a person reads
 * @param quantity       pieces ordered, 1 or more
 * @param needs          punched parts in one piece of the line
 * @param purchases      bought items in one piece of the line
 * @param joiningMinutes time to join one piece of the line, min, 0 for a single part
 * @param lots           lot sizes to be costed beside the quantity, each 1 or more
 */
public record CostLine(String id, String label, int quantity, List<Need> needs, List<Purchase> purchases,
        double joiningMinutes, List<Integer> lots) {

    /** Pieces of a part in one piece of the line. */
    public record Need(String partId, int pieces) {
    }

    /** Bought items in one piece of the line; price is for one item. */
    public record Purchase(String id, String label, double price, int pieces) {
    }

    public CostLine {
        needs = List.copyOf(needs);
        purchases = List.copyOf(purchases);
        lots = List.copyOf(lots);
    }
}
