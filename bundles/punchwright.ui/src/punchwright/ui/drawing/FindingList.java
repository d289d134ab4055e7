// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.ui.table.Accessibles;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** Findings of a drawing by the numbers that the picture shows at their places; below the table the selected one in full. */
public final class FindingList extends Composite {

    private static final int WORDS_PX = 60;

    private final DataTable<Row> table;
    private final Text words;
    private List<Row> rows = List.of();
    private IntConsumer onSelect = number -> { };

    /** One finding and its number. */
    private record Row(int number, Finding finding) {

        String place() {
            Point p = finding.place();
            return p == null ? "" : Numbers.fixed(p.x(), 2) + " / " + Numbers.fixed(p.y(), 2);
        }
    }

    /** An empty list. */
    public FindingList(Composite parent) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(this);
        table = new DataTable<>(this, Texts.of("place.findings"), List.of(Column.count("intake.col.number", 46, Row::number),
                Column.text("col.severity", 90, r -> Severities.word(r.finding())),
                Column.text("col.message", 430, r -> r.finding().message(Locale.getDefault())),
                Column.text("intake.col.place", 120, Row::place),
                Column.text("col.remedy", 380, r -> r.finding().remedy(Locale.getDefault())),
                Column.text("col.code", 150, r -> r.finding().code())));
        table.decorate((item, r) -> item.setImage(1, Severities.sign(r.finding())));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
        words = new Text(this, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
        Accessibles.name(words, Texts.of("col.message"));
        GridDataFactory.fillDefaults().grab(true, false).hint(200, WORDS_PX).applyTo(words);
        table.onSelect(r -> {
            say(r);
            onSelect.accept(r == null ? 0 : r.number());
        });
    }

    /** Shows findings, numbered from 1. */
    public void show(List<Finding> findings) {
        List<Row> now = new ArrayList<>();
        findings.forEach(f -> now.add(new Row(now.size() + 1, f)));
        rows = List.copyOf(now);
        table.setRows(rows);
        say(table.first());
    }

    private void say(Row row) {
        words.setText(row == null ? "" : row.finding().message(Locale.getDefault()) + "\n" + row.finding()
                .remedy(Locale.getDefault()));
    }

    /** Called with the number of the finding that a person selects. */
    public void onSelect(IntConsumer what) {
        onSelect = what;
    }

    /** Selects the finding of a number without telling; 0 selects none. */
    public void mark(int number) {
        table.markOnly(number < 1 || number > rows.size() ? List.of() : List.of(rows.get(number - 1)));
        say(table.first());
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
