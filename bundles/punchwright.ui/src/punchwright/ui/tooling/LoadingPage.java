// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import punchwright.model.shop.Machine;
import punchwright.ui.sheet.BalloonCells;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.tooling.LoadedPlace.Loaded;

/**
 * What stands in which place: the places as pictures above, the same as a table below; what is selected here is selected there.
 */
public final class LoadingPage extends Composite {

    private final LoadingCanvas canvas;
    private final DataTable<Line> table;

    /**
     * A tool in its place.
     *
     * @param at   the place
     * @param tool the tool
     */
    public record Line(LoadedPlace at, Loaded tool) {
    }

    private static final List<Column<Line>> COLUMNS = List.of(
            Column.count("col.balloon", 46, l -> l.tool().number()),
            Column.text("col.place", 140, l -> PlaceWords.placeName(l.at())),
            Column.count("col.insert", 60, l -> l.tool().insert() == 0 ? null : l.tool().insert()),
            Column.text("col.tool", 160, l -> l.tool().tool().getName()),
            new Column<>(Texts.of("col.angle"), 80, SWT.RIGHT, l -> l.tool().turns() ? Texts.of("loading.turns")
                    : Numbers.fixed(l.tool().angleDeg(), 1), l -> l.tool().angleDeg()),
            new Column<>(Texts.of("col.clearance"), 120, SWT.RIGHT, LoadingPage::clearance, l -> l.tool().clearanceMm()),
            new Column<>(Texts.of("col.force"), 120, SWT.RIGHT, l -> Numbers.fixed(l.tool().forceKn(), 1) + " / "
                    + Numbers.fixed(l.tool().limitKn(), 0), l -> l.tool().forceKn()),
            Column.number("col.forceShare", 110, 0, l -> l.tool().percent()));

    /** An empty page. */
    public LoadingPage(Composite parent) {
        super(parent, SWT.NONE);
        setLayout(new FillLayout());
        SashForm sash = new SashForm(this, SWT.VERTICAL);
        ScrolledComposite scroll = new ScrolledComposite(sash, SWT.V_SCROLL | SWT.BORDER);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.getVerticalBar().setIncrement(24);
        canvas = new LoadingCanvas(scroll);
        scroll.setContent(canvas);
        table = new DataTable<>(sash, Texts.of("loading.table"), COLUMNS);
        BalloonCells.in(table.control(), 0);
        sash.setWeights(68, 32);
        canvas.onSelect(place -> table.markOnly(table.shown().stream().filter(l -> l.at() == place).toList()));
        table.onSelect(line -> canvas.mark(line == null ? null : line.at()));
    }

    private static String clearance(Line line) {
        Loaded t = line.tool();
        return t.clearanceMm() <= 0 ? "" : Numbers.fixed(t.clearanceMm(), 2) + " ("
                + Numbers.fixed(t.clearanceWantedMm(), 2) + ")";
    }

    /** Shows what is loaded on a machine; null when it is not known. */
    public void show(List<LoadedPlace> places, Machine machine) {
        List<Line> lines = new ArrayList<>();
        places.forEach(at -> at.tools().forEach(t -> lines.add(new Line(at, t))));
        canvas.show(places, machine);
        table.setRows(lines);
    }

    /** The table. */
    public DataTable<Line> table() {
        return table;
    }
}
