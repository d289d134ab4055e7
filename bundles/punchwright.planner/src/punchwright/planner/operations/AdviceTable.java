// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import punchwright.engine.advice.Advice;
import punchwright.engine.advice.MadePossible;
import punchwright.engine.advice.OrderToday;
import punchwright.engine.advice.PartSaving;
import punchwright.engine.advice.Price;
import punchwright.engine.advice.Recommendation;

/** An advice as lines for a terminal. */
final class AdviceTable {

    private static final int PLACES_NAMED = 2;

    private final Advice advice;
    private final String currency;
    private final List<String> lines = new ArrayList<>();

    private AdviceTable(Advice advice, String currency) {
        this.advice = advice;
        this.currency = currency;
    }

    static List<String> of(Advice advice, String currency) {
        AdviceTable table = new AdviceTable(advice, currency);
        table.today();
        table.ranking();
        table.enabling();
        return table.lines;
    }

    private void today() {
        line("%-12s %-30s %8s %14s", "order", "made on", "parts", currency + " a year");
        for (OrderToday o : advice.today()) {
            line("%-12s %-30s %3d of %d %14.2f", o.order(), o.machine().isEmpty() ? "no machine" : cut(o.machine(), 30), o
                    .partsMade(), o.parts(), o.perYear());
        }
        line("%d additions looked at, %d worked out in %d choices of tools; the others save less by their bound.",
                advice.additions(),
                advice.workedOut(), advice.choices());
    }

    private void ranking() {
        line("");
        line("%-3s %-44s %10s %11s %9s %9s", "", "what saves", "price", "saves/year", "payback", "press h/a");
        for (Recommendation r : advice.ranking()) {
            row(r);
            r.parts().stream().limit(PLACES_NAMED).forEach(p -> lines.add("      " + part(p)));
        }
    }

    private void row(Recommendation r) {
        line("%2d. %-44s %9.2f%s %11.2f %9s %9.1f", r.rank(), cut(r.addition().name(), 44), r.addition().price().value(),
                r.addition().price().basis() == Price.Basis.TABLE ? "*" : " ", r.saving().perYear(), payback(r.paybackYears()), r
                        .saving().pressHours());
    }

    private static String part(PartSaving p) {
        String moved = p.machineNow().equals(p.machineThen()) ? p.machineNow() : p.machineNow() + " -> " + p.machineThen();
        return String.format(Locale.ROOT, "order %s, %s on %s: %d hits instead of %d, %.2f a year", p.order(), p.part(), moved, p
                .hitsThen(), p.hitsNow(), p.perYear());
    }

    private void enabling() {
        if (advice.enabling().isEmpty()) {
            return;
        }
        line("");
        line("%-3s %-44s %10s %11s", "", "what makes something possible", "price", "saves/year");
        for (Recommendation r : advice.enabling()) {
            line("%2d. %-44s %9.2f%s %11.2f", r.rank(), cut(r.addition().name(), 44), r.addition().price().value(), r.addition()
                    .price().basis() == Price.Basis.TABLE ? "*" : " ", r.saving().perYear());
            r.makesPossible().stream().limit(PLACES_NAMED).forEach(p -> lines.add("      " + possible(p)));
            if (r.makesPossible().size() > PLACES_NAMED) {
                lines.add("      and " + (r.makesPossible().size() - PLACES_NAMED) + " more");
            }
        }
    }

    static String possible(MadePossible p) {
        return "order " + p.order() + (p.whole() ? " (then whole)" : "") + " on " + p.machine() + ", " + p.part()
                + (p.nowhere() ? ", made nowhere today" : "") + ": refused today because: " + p.today().message();
    }

    private static String payback(double years) {
        return Double.isInfinite(years) ? "never" : years < 2 ? String.format(Locale.ROOT, "%.1f mon", 12 * years)
                : String.format(Locale.ROOT, "%.1f a", years);
    }

    private static String cut(String text, int width) {
        return text.length() <= width ? text : text.substring(0, width - 1) + "\u2026";
    }

    private void line(String format, Object... values) {
        lines.add(String.format(Locale.ROOT, format, values).stripTrailing());
    }
}
