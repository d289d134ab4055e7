// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.Severity;
import punchwright.model.work.Part;
import punchwright.model.work.ToolWish;
import punchwright.model.work.WishKind;
import punchwright.ui.findings.FindingRow;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** Columns of the tables of operations, as data. */
final class OperationColumns {

    /** The column that shows the tools' balloons. */
    static final int BALLOON = 1;
    private static final Icons[] SIGNS = { Icons.ERROR, Icons.WARNING, Icons.NOTE };
    private static final double LIMIT_PERCENT = 100;

    static final List<Column<PassedOver>> PASSED = List.of(
            Column.text("col.tool", 150, PassedOver::tool),
            new Column<>(Texts.of("col.passed"), 100, SWT.LEFT, p -> Texts.of("operations.passed." + p.rank()), PassedOver::rank),
            Column.text("col.message", 380, PassedOver::reason),
            Column.text("col.remedy", 400, PassedOver::remedy),
            Column.text("col.code", 150, PassedOver::code));

    static final List<Column<ToolWish>> WISHES = List.of(
            Column.text("col.wish", 110, w -> Texts.of(w.getKind())),
            Column.text("col.tool", 170, w -> w.getTool() == null ? "" : w.getTool().getName()),
            Column.text("col.what", 260, OperationColumns::where));

    private OperationColumns() {
    }

    static List<Column<FeatureLine>> lines(String currency) {
        return List.of(
                Column.text("col.what", 150, l -> (l.features().size() > 1 ? l.features().size() + " \u00d7 " : "")
                        + FeatureTexts.of(l.features(), l.ways().get(0).features().size() > 1)),
                Column.text("col.balloon", 54, l -> l.balloons().stream().map(String::valueOf).collect(Collectors.joining(", "))),
                Column.text("col.tool", 146, l -> l.chosen() == null ? Texts.of("operations.cannot") : l.tools()),
                Column.count("col.hits", 50, FeatureLine::hits),
                Column.number("col.time", 60, 1, FeatureLine::seconds),
                money("col.cost", currency, FeatureLine::money),
                Column.number("col.forceReserve", 70, 0, l -> l.chosen() == null ? null : l.chosen().forcePercent()),
                Column.text("col.pinned", 70, l -> l.pinned().isEmpty() ? "" : Texts.of("operations.pinned")),
                new Column<>(Texts.of("col.moreCost", currency), 84, SWT.RIGHT,
                        l -> changed(l) ? OperationsSummary.signed(l.money() - l.moneyFree(), 3)
                        : "", l -> l.money() - l.moneyFree()),
                new Column<>(Texts.of("col.moreHits"), 70, SWT.RIGHT, l -> changed(l)
                ? OperationsSummary.signed(l.hits() - l.hitsFree(), 0) : "", l -> (double) (l.hits() - l.hitsFree())),
                Column.text("col.before", 150, l -> l.before().equals(l.tools()) ? "" : l.before()),
                Column.text("col.features", 90, l -> FeatureTexts.numbers(l.features())));
    }

    private static boolean changed(FeatureLine line) {
        return !line.before().equals(line.tools()) || line.hits() != line.hitsFree()
                || Math.abs(line.money() - line.moneyFree()) > 5e-4;
    }

    static List<Column<Way>> ways(String currency) {
        return List.of(
                Column.text("col.chosen", 70, w -> w.way().chosen() ? Texts.of("operations.chosen") : ""),
                Column.text("col.tool", 190, Way::tools),
                Column.count("col.hits", 56, w -> w.way().hits()),
                Column.number("col.time", 66, 2, w -> w.way().seconds()),
                money("col.cost", currency, Way::money),
                new Column<>(Texts.of("col.moreCost", currency), 90, SWT.RIGHT,
                        w -> w.way().chosen() ? "" : OperationsSummary.signed(w.difference(), 3), Way::difference),
                money("col.wear", currency, w -> w.way().wear()),
                Column.number("col.forceReserve", 90, 0, w -> w.way().forcePercent()),
                Column.number("col.reach", 80, 1, w -> w.way().reachMm()),
                Column.text("col.notes", 260, OperationColumns::notes));
    }

    private static String notes(Way w) {
        String over = w.way().forcePercent() > LIMIT_PERCENT ? Texts.of("operations.overLimit") + " " : "";
        return over + w.way().why();
    }

    private static <T> Column<T> money(String key, String currency, java.util.function.ToDoubleFunction<T> value) {
        return new Column<>(Texts.of(key, currency), 84, SWT.RIGHT, row -> Numbers.fixed(value.applyAsDouble(row), 3),
                row -> value.applyAsDouble(row));
    }

    private static String where(ToolWish wish) {
        if (wish.getKind() == WishKind.FORBID) {
            return Texts.of("operations.wholePart");
        }
        String kind = Texts.find("kind." + wish.getFeatureKind()) == null ? wish.getFeatureKind()
                : Texts.of("kind." + wish.getFeatureKind());
        return Texts.of("operations.at", kind, FeatureTexts.size(wish.getXMm()), FeatureTexts.size(wish.getYMm()));
    }

    /** What cannot be made is named in the colour of errors beside its words; the chosen way is bold. */
    static void decorate(DataTable<FeatureLine> lines, DataTable<Way> ways, DataTable<PassedOver> passed) {
        lines.decorate((item, line) -> item.setForeground(line.chosen() == null ? Inks.of(Ink.ERROR) : null));
        ways.decorate((item, way) -> item.setFont(way.way().chosen() ? JFaceResources.getFontRegistry()
                .getBold(JFaceResources.DEFAULT_FONT)
                : null));
        passed.decorate((item, row) -> item.setImage(1, SIGNS[row.rank()].image()));
    }

    /** 0 error, 1 warning, 2 note. */
    static int rank(Finding finding) {
        return finding.severity() == Severity.ERROR ? 0 : finding.severity() == Severity.WARNING ? 1 : 2;
    }

    static FindingRow row(Finding f, Part part, Locale locale) {
        return new FindingRow(rank(f), f.code(), part.getName(), f.subject(), f.message(locale), f.remedy(locale), part, "",
                f.place() == null ? Double.NaN : f.place().x(), f.place() == null ? Double.NaN : f.place().y());
    }
}
