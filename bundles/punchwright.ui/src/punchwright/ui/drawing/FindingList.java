// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;

import org.eclipse.swt.widgets.Composite;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** Findings of a drawing by the numbers that the picture shows at their places. */
public final class FindingList {

    private final DataTable<Row> table;
    private List<Row> rows = List.of();

    /** One finding and its number. */
    private record Row(int number, Finding finding) {

        String place() {
            Point p = finding.place();
            return p == null ? "" : Numbers.fixed(p.x(), 2) + " / " + Numbers.fixed(p.y(), 2);
        }
    }

    /** An empty list. */
    public FindingList(Composite parent) {
        table = new DataTable<>(parent, Texts.of("place.findings"), List.of(Column.count("intake.col.number", 46, Row::number),
                Column.text("col.severity", 90, r -> Severities.word(r.finding())),
                Column.text("col.message", 430, r -> r.finding().message(Locale.getDefault())),
                Column.text("intake.col.place", 120, Row::place),
                Column.text("col.remedy", 380, r -> r.finding().remedy(Locale.getDefault())),
                Column.text("col.code", 150, r -> r.finding().code())));
        table.decorate((item, r) -> item.setImage(1, Severities.sign(r.finding())));
    }

    /** Shows findings, numbered from 1. */
    public void show(List<Finding> findings) {
        List<Row> now = new ArrayList<>();
        findings.forEach(f -> now.add(new Row(now.size() + 1, f)));
        rows = List.copyOf(now);
        table.setRows(rows);
    }

    /** Called with the number of the finding that a person selects. */
    public void onSelect(IntConsumer what) {
        table.onSelect(r -> what.accept(r == null ? 0 : r.number()));
    }

    /** Selects the finding of a number without telling; 0 selects none. */
    public void mark(int number) {
        table.markOnly(number < 1 || number > rows.size() ? List.of() : List.of(rows.get(number - 1)));
    }

    /** Selects the finding of a number as a person does. */
    public void select(int number) {
        table.select(rows.get(number - 1));
    }

    /** Numbers of the selected findings. */
    public List<Integer> selected() {
        return table.selection().stream().map(Row::number).toList();
    }

    /** The widget and its rows. */
    public DataTable<?> table() {
        return table;
    }
}
