// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingCost;
import punchwright.engine.nesting.Remnant;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.planning.SheetLayouts;
import punchwright.planner.convert.StockReader;
import punchwright.planner.layouts.KeptWriter;
import punchwright.planner.layouts.LayoutLine;
import punchwright.planner.layouts.OrderLayouts;

/** Layouts as lines for a terminal: a table for each material and thickness, the stock it takes, and how far the bound is. */
final class LayoutTable {

    private final OrderLayouts.Result result;
    private final String currency;
    private final List<String> lines = new ArrayList<>();

    private LayoutTable(OrderLayouts.Result result, String currency) {
        this.result = result;
        this.currency = currency;
    }

    static List<String> of(String order, OrderLayouts.Result result, String currency) {
        LayoutTable table = new LayoutTable(result, currency);
        table.line("order %s on %s%s", order, result.machine().getName(),
                result.complete() ? "" : ": not all of it can be laid out");
        result.sheets().stream().filter(s -> !s.nesting().layouts().isEmpty()).forEach(table::sheets);
        return table.lines;
    }

    private void sheets(SheetLayouts s) {
        Nesting n = s.nesting();
        line("%s, %s mm, web %s mm", s.material().grade(), number(s.thicknessMm()), number(KeptWriter.webMm(s)));
        line("  %3s %-24s %-14s %5s %7s %7s %10s  %s", "no", "stock", "mm", "runs", "pieces", "use %", currency, "remnants, mm");
        for (LayoutLine l : LayoutLine.of(s.job(), n.layouts())) {
            SheetOffer sheet = l.layout().sheet();
            line("  %3d %-24s %-14s %5d %7d %7.1f %10.2f  %s", l.number(), cut(sheet.id(), 24),
                    number(sheet.lengthMm()) + " x " + number(sheet.widthMm()), l.layout().runs(), l.pieceCount(),
                    100 * l.utilisation(), l.cost().total(), remnants(l.remnants()));
            line("      %s", parts(l));
        }
        NestingCost c = n.cost();
        int sheets = n.layouts().stream().mapToInt(l -> l.runs()).sum();
        line("  %d %s, use %.1f %%, %.1f m2; bound %.1f m2%s", sheets, sheets == 1 ? "sheet" : "sheets",
                100 * n.utilisation(), n.sheetMm2() * 1e-6, n.boundMm2() * 1e-6, gap(n.areaGap(), n.boundMm2()));
        String bound = n.boundCost() > 0 ? String.format(Locale.ROOT, "; bound %.2f%s", n.boundCost(),
                gap(n.costGap(), n.boundCost())) : "";
        line("  material %.2f less remnants %.2f less scrap %.2f plus handling %.2f = %.2f %s%s", c.material(), c.remnants(),
                c.scrap(), c.handling() + c.machine(), c.total(), currency, bound);
        stock(n).forEach((sheet, used) -> line("  stock %s: %d used%s", sheet.id(), used,
                sheet.quantity() >= StockReader.AS_MANY_AS_NEEDED ? ", can be ordered" : " of " + sheet.quantity() + " on hand"));
    }

    private static String gap(double gap, double bound) {
        return bound > 0 ? String.format(Locale.ROOT, ", %.1f %% above it", 100 * gap) : "";
    }

    static Map<SheetOffer, Integer> stock(Nesting n) {
        Map<SheetOffer, Integer> used = new LinkedHashMap<>();
        n.layouts().forEach(l -> used.merge(l.sheet(), l.runs(), Integer::sum));
        return used;
    }

    private String parts(LayoutLine l) {
        return l.pieces().entrySet().stream().map(e -> e.getValue() + " x " + label(result, e.getKey()))
                .collect(Collectors.joining(", "));
    }

    /** Number of a part, its id without one. */
    static String label(OrderLayouts.Result result, String partId) {
        String number = result.parts().containsKey(partId) ? result.parts().get(partId).getNumber() : null;
        return number == null ? partId : number;
    }

    private static String remnants(List<Remnant> remnants) {
        return remnants.isEmpty() ? "none" : remnants.stream().map(r -> number(r.lengthMm()) + " x " + number(r.widthMm()))
                .collect(Collectors.joining(", "));
    }

    private static String number(double mm) {
        return String.format(Locale.ROOT, "%.1f", mm).replaceFirst("\\.0$", "");
    }

    private static String cut(String text, int width) {
        return text.length() <= width ? text : text.substring(0, width - 1) + "\u2026";
    }

    private void line(String format, Object... values) {
        lines.add(String.format(Locale.ROOT, format, values).stripTrailing());
    }
}
