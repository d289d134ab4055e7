// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.model.work.Want;
import punchwright.planner.convert.InputException;
import punchwright.planner.convert.OrderReader;
import punchwright.ui.text.Texts;

/**
 * A part of the order against the layouts of one machine.
 *
 * @param part   the part
 * @param wanted pieces by how firmly they are wanted
 * @param made   pieces on all layouts, all runs
 */
public record PartNeed(Part part, Map<Want, Integer> wanted, int made) {

    /** Pieces asked for at most. */
    public int most() {
        return wanted.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Pieces still missing of those that must be made. */
    public int missing() {
        return Math.max(0, wanted.getOrDefault(Want.MUST, 0) - made);
    }

    /** What is asked for, in words. */
    String words() {
        return wanted.keySet().stream().map(Texts::of).collect(Collectors.joining(", "));
    }

    /** What there is to say of the count, in a word. */
    String verdict() {
        return missing() > 0 ? Texts.of("layouts.missing") : made > most() ? Texts.of("layouts.tooMany")
                : Texts.of("layouts.enough");
    }

    /** The needs of an order, in the order of its lines, and after them parts on the sheets that are not ordered. */
    static List<PartNeed> of(Order order, List<BenchRow> rows) {
        Map<Part, Integer> made = new LinkedHashMap<>();
        for (BenchRow row : rows) {
            for (KeptPlacement p : row.kept().getPlacements()) {
                if (p.getPart() != null) {
                    made.merge(p.getPart(), row.kept().getRuns(), Integer::sum);
                }
            }
        }
        List<PartNeed> needs = new ArrayList<>();
        wanted(order).forEach((part, pieces) -> needs.add(new PartNeed(part, pieces, made.getOrDefault(part, 0))));
        made.forEach((part, pieces) -> {
            if (needs.stream().noneMatch(n -> n.part() == part)) {
                needs.add(new PartNeed(part, Map.of(), pieces));
            }
        });
        return needs;
    }

    private static Map<Part, Map<Want, Integer>> wanted(Order order) {
        try {
            return OrderReader.wanted(order);
        } catch (InputException e) {
            return Map.of();
        }
    }
}
