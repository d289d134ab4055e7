// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** The distinct parts of a drawing with their number of copies; each can be left out. Space switches the selected ones. */
public final class FoundParts extends Composite {

    private final DataTable<IntakePart> table;
    private final Button take;
    private Runnable onTake = () -> { };

    FoundParts(Composite parent) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(this);
        table = new DataTable<>(this, Texts.of("place.parts"), columns());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
        take = new Button(this, SWT.CHECK);
        take.setText(Texts.of("intake.take"));
        take.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> take(take.getSelection())));
        table.control().addListener(SWT.KeyDown, e -> {
            if (e.character == ' ' && table.first() != null) {
                take(!table.first().isTaken());
            }
        });
        onSelect(p -> { });
    }

    private static List<Column<IntakePart>> columns() {
        return List.of(Column.count("intake.col.number", 46, p -> p.found().number()),
                Column.text("intake.col.taken", 60, p -> Texts.of(p.isTaken() ? "yes" : "no")),
                Column.text("intake.col.size", 120, FoundParts::size), Column.count("intake.col.copies", 60,
                        p -> p.found().count()),
                Column.count("intake.col.mirrored", 70, p -> p.found().mirrored()),
                Column.count("intake.col.openings", 70, p -> p.found().openings()),
                Column.number("intake.col.area", 80, 1, p -> p.found().areaMm2() / 100));
    }

    static String size(IntakePart part) {
        return Numbers.fixed(part.found().lengthMm(), 1) + " \u00d7 " + Numbers.fixed(part.found().widthMm(), 1);
    }

    private void take(boolean yes) {
        table.selection().forEach(p -> p.setTaken(yes));
        table.refresh();
        take.setSelection(yes);
        onTake.run();
    }

    /** Told when a part is left out or taken. */
    void onTake(Runnable what) {
        onTake = what;
    }

    /** Called with the selected part, or null. */
    void onSelect(Consumer<IntakePart> what) {
        table.onSelect(p -> {
            follow();
            what.accept(p);
        });
        follow();
    }

    private void follow() {
        take.setEnabled(table.first() != null);
        take.setSelection(table.first() != null && table.first().isTaken());
    }

    void show(List<IntakePart> parts) {
        table.setRows(parts);
        follow();
    }

    /** Selects the part of a number without telling; 0 none. */
    void mark(int number) {
        table.markOnly(table.shown().stream().filter(p -> p.found().number() == number).toList());
        follow();
    }

    /** The number of the selected part, 0 for none. */
    int selected() {
        return table.first() == null ? 0 : table.first().found().number();
    }

    /** The parts shown, for tests. */
    public DataTable<IntakePart> table() {
        return table;
    }
}
