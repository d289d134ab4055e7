// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

import punchwright.engine.geometry.Bounds;
import punchwright.planner.layouts.ArrangedSheet;
import punchwright.planner.layouts.PieceProblem;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** The tables beside the picture: layouts, and in tabs parts, pieces, what the check says, stock with remnants, totals. */
public final class LayoutTables {

    /** A piece as a line of the table. */
    public record PieceLine(int index, String part, Bounds box, double angleDeg, boolean locked, boolean wrong) {
    }

    /** A problem as a line of the table; the number is that of its sign in the picture. */
    public record ProblemLine(int number, PieceProblem problem) {
    }

    private final DataTable<BenchRow> layouts;
    private final DataTable<PartNeed> parts;
    private final DataTable<PieceLine> pieces;
    private final DataTable<ProblemLine> problems;
    private final DataTable<StockUse> stock;
    private final DataTable<Totals> totals;
    private final TabItem problemTab;

    LayoutTables(Composite above, TabFolder tabs, String currency) {
        layouts = new DataTable<>(above, Texts.of("layouts.table"), layoutColumns(currency));
        layouts.decorate((item, r) -> {
            boolean wrong = r.sheet() == null || !r.problems().isEmpty();
            item.setImage(1, (wrong ? Icons.ERROR : Icons.RIGHT).image());
        });
        parts = new DataTable<>(tabs, Texts.of("layouts.tab.parts"), partColumns());
        parts.decorate((item, n) -> item.setForeground(n.missing() > 0 ? Inks.of(Ink.ERROR) : null));
        tab(tabs, "layouts.tab.parts", parts);
        pieces = new DataTable<>(tabs, Texts.of("layouts.tab.pieces"), pieceColumns());
        pieces.decorate((item, p) -> item.setImage(0, (p.wrong() ? Icons.ERROR : p.locked() ? Icons.LOCK : Icons.PART).image()));
        tab(tabs, "layouts.tab.pieces", pieces);
        problems = new DataTable<>(tabs, Texts.of("layouts.tab.check"), problemColumns());
        problems.decorate((item, p) -> item.setImage(0, Icons.ERROR.image()));
        problemTab = tab(tabs, "layouts.tab.check", problems);
        stock = new DataTable<>(tabs, Texts.of("layouts.tab.stock"), stockColumns(currency));
        tab(tabs, "layouts.tab.stock", stock);
        totals = new DataTable<>(tabs, Texts.of("layouts.tab.totals"), totalColumns(currency));
        tab(tabs, "layouts.tab.totals", totals);
    }

    private static TabItem tab(TabFolder tabs, String key, DataTable<?> table) {
        TabItem item = new TabItem(tabs, SWT.NONE);
        item.setText(Texts.of(key));
        item.setControl(table.control());
        return item;
    }

    private static List<Column<BenchRow>> layoutColumns(String currency) {
        return List.of(Column.count("intake.col.number", 40, BenchRow::number),
                Column.text("layouts.col.check", 100, BenchRow::verdict),
                Column.count("layouts.runs", 50, r -> r.kept().getRuns()),
                Column.count("layouts.col.pieces", 60, r -> r.kept().getPlacements().size()),
                Column.number("layouts.col.use", 70, 1, BenchRow::usePercent),
                money("col.cost", currency, r -> r.cost() == null ? Double.NaN : r.cost()),
                Column.text("layouts.col.remnants", 120, BenchRow::remnants),
                Column.text("layouts.stock", 160, BenchRow::stock),
                Column.text("layouts.col.size", 100, BenchRow::size),
                Column.text("layouts.col.material", 130, BenchRow::material));
    }

    private static List<Column<PartNeed>> partColumns() {
        return List.of(Column.text("col.part", 110, n -> KeptNames.label(n.part())),
                Column.text("layouts.col.want", 80, PartNeed::words),
                Column.count("layouts.col.ordered", 70, PartNeed::most),
                Column.count("layouts.col.made", 80, PartNeed::made),
                Column.count("layouts.col.missing", 70, n -> n.missing() == 0 ? null : n.missing()),
                Column.text("layouts.col.verdict", 100, PartNeed::verdict));
    }

    private static List<Column<PieceLine>> pieceColumns() {
        return List.of(Column.count("intake.col.number", 60, p -> p.index() + 1), Column.text("col.part", 110, PieceLine::part),
                Column.number("layouts.col.x", 80, 2, p -> p.box().minX()),
                Column.number("layouts.col.y", 80, 2, p -> p.box().minY()),
                Column.number("col.angle", 70, 1, PieceLine::angleDeg),
                Column.text("layouts.col.state", 150, p -> p.wrong() ? Texts.of("layouts.wrong")
                        : p.locked() ? Texts.of("layouts.locked") : ""));
    }

    private static List<Column<ProblemLine>> problemColumns() {
        return List.of(Column.count("intake.col.number", 60, ProblemLine::number),
                Column.text("layouts.col.what", 120, p -> ProblemWords.word(p.problem())),
                Column.text("layouts.col.pieces", 70, p -> ProblemWords.pieces(p.problem())),
                Column.text("col.message", 330, p -> p.problem().finding().message(Locale.getDefault())),
                Column.text("col.remedy", 260, p -> p.problem().finding().remedy(Locale.getDefault())));
    }

    private static List<Column<StockUse>> stockColumns(String currency) {
        return List.of(Column.text("layouts.stock", 170, StockUse::name), Column.count("layouts.col.used", 60, StockUse::used),
                Column.text("layouts.col.onHand", 125, StockUse::onHand),
                money("col.price", currency, u -> u.sheet().price()),
                Column.text("layouts.col.remnants", 200, StockUse::remnantWords),
                money("layouts.col.worth", currency, StockUse::value));
    }

    private static List<Column<Totals>> totalColumns(String currency) {
        return List.of(Column.text("layouts.col.material", 170, Totals::name), Column.count("col.sheets", 60, Totals::sheets),
                Column.number("layouts.col.use", 70, 1, t -> 100 * t.figures().utilisation()),
                Column.number("layouts.col.area", 80, 2, t -> t.figures().sheetMm2() * 1e-6),
                Column.number("layouts.col.bound", 80, 2, t -> t.figures().boundMm2() * 1e-6),
                Column.number("layouts.col.gap", 90, 1, Totals::gapPercent),
                money("layouts.col.material.cost", currency, t -> t.figures().cost().material()),
                money("layouts.col.worth", currency, t -> t.figures().cost().remnants()),
                money("layouts.col.scrap", currency, t -> t.figures().cost().scrap()),
                money("layouts.col.handling", currency, t -> t.figures().cost().handling()),
                money("col.cost", currency, t -> t.figures().cost().total()),
                Column.number("layouts.col.costGap", 90, 1, Totals::costGapPercent));
    }

    private static <T> Column<T> money(String key, String currency, ToDoubleFunction<T> value) {
        return new Column<>(Texts.of(key, currency), 76, SWT.RIGHT, row -> Double.isNaN(value.applyAsDouble(row)) ? ""
                : Numbers.fixed(value.applyAsDouble(row), 2), row -> value.applyAsDouble(row));
    }

    /** Shows the layouts and what they come to. */
    void show(BenchRows bench, List<PartNeed> needs) {
        layouts.setRows(bench.rows());
        parts.setRows(needs);
        stock.setRows(StockUse.of(bench.rows()));
        totals.setRows(Totals.of(bench, needs));
    }

    /** Shows one sheet as it is seen, with what is wrong on it. */
    void show(ArrangedSheet sheet, List<PieceProblem> wrong, List<Integer> selected) {
        List<PieceLine> lines = new ArrayList<>();
        List<ProblemLine> found = new ArrayList<>();
        for (int i = 0; sheet != null && i < sheet.pieces().size(); i++) {
            int number = i + 1;
            var piece = sheet.pieces().get(i);
            lines.add(new PieceLine(i, KeptNames.label(piece.partId()), sheet.box(piece), piece.angleDeg(), piece.locked(),
                    wrong.stream().anyMatch(p -> p.pieces().contains(number))));
        }
        wrong.forEach(p -> found.add(new ProblemLine(found.size() + 1, p)));
        pieces.setRows(lines);
        pieces.markOnly(lines.stream().filter(l -> selected.contains(l.index())).toList());
        problems.setRows(found);
        problemTab.setText(Texts.of("layouts.tab.check.count", found.size()));
    }

    /** The layouts of the machine. */
    public DataTable<BenchRow> layouts() {
        return layouts;
    }

    /** Parts ordered against parts on the sheets. */
    public DataTable<PartNeed> parts() {
        return parts;
    }

    /** Pieces of the sheet that is shown. */
    public DataTable<PieceLine> pieces() {
        return pieces;
    }

    /** What the check says of the sheet that is shown. */
    public DataTable<ProblemLine> problems() {
        return problems;
    }

    /** Stock used and remnants. */
    public DataTable<StockUse> stock() {
        return stock;
    }

    /** All layouts by material and thickness. */
    public DataTable<Totals> totals() {
        return totals;
    }
}
