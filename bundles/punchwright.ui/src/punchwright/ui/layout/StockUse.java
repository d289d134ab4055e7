// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import punchwright.engine.nesting.Remnant;
import punchwright.engine.nesting.SheetOffer;
import punchwright.planner.convert.StockReader;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/**
 * A stock item that the layouts use.
 *
 * @param name     what people call it
 * @param sheet    the item
 * @param used     sheets used
 * @param remnants rests worth keeping: size in mm and how many
 * @param value    worth of these rests
 */
public record StockUse(String name, SheetOffer sheet, int used, Map<String, Integer> remnants, double value) {

    /** What is on hand, in a word where more can be had. */
    String onHand() {
        return sheet.quantity() >= StockReader.AS_MANY_AS_NEEDED ? Texts.of("layouts.orderable")
                : String.valueOf(sheet.quantity());
    }

    String remnantWords() {
        return remnants.entrySet().stream().map(e -> e.getValue() + " \u00d7 (" + e.getKey() + ")")
                .collect(Collectors.joining(", "));
    }

    /** Stock used by layouts, in their order. */
    static List<StockUse> of(List<BenchRow> rows) {
        Map<String, List<BenchRow>> byStock = new LinkedHashMap<>();
        rows.stream().filter(r -> r.sheet() != null)
                .forEach(r -> byStock.computeIfAbsent(r.sheet().sheet().id(), k -> new ArrayList<>()).add(r));
        List<StockUse> uses = new ArrayList<>();
        byStock.values().forEach(same -> {
            Map<String, Integer> remnants = new LinkedHashMap<>();
            double value = 0;
            int used = 0;
            for (BenchRow r : same) {
                used += r.sheet().runs();
                for (Remnant m : r.figures().remnants()) {
                    remnants.merge(size(m), r.sheet().runs(), Integer::sum);
                    value += m.value() * r.sheet().runs();
                }
            }
            uses.add(new StockUse(same.getFirst().stock(), same.getFirst().sheet().sheet(), used, remnants, value));
        });
        return uses;
    }

    private static String size(Remnant m) {
        return Numbers.plain(Math.round(m.lengthMm())) + " \u00d7 " + Numbers.plain(Math.round(m.widthMm()));
    }
}
