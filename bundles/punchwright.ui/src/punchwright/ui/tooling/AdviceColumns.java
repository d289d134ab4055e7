// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import org.eclipse.swt.SWT;

import punchwright.engine.advice.MadePossible;
import punchwright.engine.advice.OrderToday;
import punchwright.engine.advice.PartSaving;
import punchwright.engine.advice.Recommendation;
import punchwright.engine.finding.Finding;
import punchwright.ui.table.Column;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** Columns of the tables of the tool advice, as data. */
final class AdviceColumns {

    static final List<Column<MadePossible>> POSSIBLE = List.of(
            Column.text("col.order", 110, MadePossible::order), Column.text("col.machine", 170, MadePossible::machine),
            Column.text("col.part", 200, m -> m.part().isEmpty() ? Texts.of("advice.together") : m.part()),
            Column.text("col.wholeOrder", 90, m -> Texts.of(m.whole() ? "yes" : "no")),
            Column.text("col.refusedToday", 420, m -> m.today() == null ? "" : m.today().message(Locale.getDefault())));

    private AdviceColumns() {
    }

    static List<Column<Recommendation>> ranking(String currency) {
        return List.of(
                Column.count("col.rank", 50, Recommendation::rank),
                Column.text("col.addition", 210, r -> r.addition().name()),
                Column.text("col.additionKind", 110, r -> Texts.of("advice.kind." + r.addition().kind().name())),
                money("col.saving", 120, currency, r -> r.saving().perYear()),
                money("col.price", 100, currency, r -> r.addition().price().value()),
                Column.text("col.basis", 110, r -> Texts.of("advice.basis." + r.addition().price().basis().name())),
                new Column<>(Texts.of("col.payback"), 110, SWT.RIGHT, r -> years(r.paybackYears()), Recommendation::paybackYears),
                Column.number("col.pressHours", 110, 1, r -> r.saving().pressHours()),
                Column.count("col.possible", 120, r -> r.makesPossible().size()),
                Column.text("col.why", 320, r -> r.addition().why()));
    }

    private static String years(double years) {
        return Double.isInfinite(years) ? Texts.of("advice.never") : Numbers.fixed(years, 1);
    }

    static List<Column<PartSaving>> parts(String currency) {
        return List.of(
                Column.text("col.order", 110, PartSaving::order), Column.text("col.part", 200, PartSaving::part),
                Column.text("col.machine", 260, p -> p.machineNow().equals(p.machineThen()) ? p.machineNow()
                        : p.machineNow() + " \u2192 " + p.machineThen()),
                Column.count("col.hitsNow", 90, PartSaving::hitsNow), Column.count("col.hitsThen", 90, PartSaving::hitsThen),
                money("col.saving", 120, currency, PartSaving::perYear));
    }

    static List<Column<OrderToday>> today(String currency) {
        return List.of(
                Column.text("col.order", 110, OrderToday::order),
                Column.text("col.machine", 190, o -> o.machine().isEmpty() ? Texts.of("operations.cannot") : o.machine()),
                money("col.costPerYear", 130, currency, OrderToday::perYear),
                Column.text("col.made", 110, o -> Texts.of("advice.ofParts", o.partsMade(), o.parts())),
                Column.text("col.whyNot", 460, o -> String.join(" ", o.refusals().stream().map(AdviceColumns::line).toList())));
    }

    private static String line(Finding f) {
        return f.subject() + ": " + f.message(Locale.getDefault());
    }

    private static <T> Column<T> money(String key, int width, String currency, Function<T, Double> value) {
        return new Column<>(Texts.of(key, currency), width, SWT.RIGHT, row -> Numbers.fixed(value.apply(row), 2), value::apply);
    }
}
