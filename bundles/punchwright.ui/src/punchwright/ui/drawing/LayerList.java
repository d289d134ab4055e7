// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import punchwright.engine.drawing.LayerMeaning;
import punchwright.engine.drawing.LayerUse;
import punchwright.model.shop.LayerRule;
import punchwright.planner.convert.ShopLayerRules;
import punchwright.planner.intake.DrawingReading;
import punchwright.ui.table.Accessibles;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;

/** The layers of a drawing with what they stand for; another meaning counts for this drawing, or as a rule of the shop. */
public final class LayerList extends Composite {

    private static final LayerMeaning[] MEANINGS = LayerMeaning.values();
    private static final int NAMED_COLOURS = 7;

    private final Intake intake;
    private final DataTable<LayerUse> table;
    private final Combo meaning;
    private final Button keep;
    private final Button hidden;
    private IntakeDrawing drawing;
    private List<LayerUse> all = List.of();

    LayerList(Composite parent, Intake intake) {
        super(parent, SWT.NONE);
        this.intake = intake;
        GridLayoutFactory.fillDefaults().numColumns(2).margins(4, 4).applyTo(this);
        table = new DataTable<>(this, Texts.of("intake.layers"), columns());
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(table.control());
        Label label = new Label(this, SWT.NONE);
        label.setText(Texts.of("intake.meaning"));
        meaning = new Combo(this, SWT.READ_ONLY);
        meaning.setData("field", "meaning");
        Accessibles.name(meaning, Texts.of("intake.meaning.name"));
        for (LayerMeaning one : MEANINGS) {
            meaning.add(Texts.of(ShopLayerRules.model(one)));
        }
        GridDataFactory.fillDefaults().grab(true, false).applyTo(meaning);
        keep = check("intake.keepRule");
        keep.setData("field", "keep");
        hidden = check("intake.hiddenLayers");
        meaning.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> decide(MEANINGS[meaning.getSelectionIndex()])));
        hidden.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> readHidden(hidden.getSelection())));
        table.onSelect(this::selected);
        selected(null);
    }

    private Button check(String key) {
        Button check = new Button(this, SWT.CHECK);
        check.setText(Texts.of(key));
        GridDataFactory.fillDefaults().span(2, 1).applyTo(check);
        return check;
    }

    private static List<Column<LayerUse>> columns() {
        return List.of(Column.text("intake.col.layer", 120, LayerUse::layer),
                Column.text("intake.col.meaning", 100, u -> Texts.of(ShopLayerRules.model(u.meaning()))),
                Column.text("intake.col.shown", 70, u -> Texts.of(u.hidden() ? "intake.hidden" : "intake.shown")),
                Column.count("intake.col.curves", 60, LayerUse::curves), Column.text("intake.col.colour", 80, LayerList::colour),
                Column.text("intake.col.lineType", 100, LayerUse::lineType));
    }

    private static String colour(LayerUse use) {
        return use.colour() <= NAMED_COLOURS ? Texts.of("colour." + use.colour(), use.colour()) : Integer.toString(use.colour());
    }

    private void selected(LayerUse use) {
        meaning.setEnabled(use != null);
        keep.setEnabled(use != null);
        meaning.select(use == null ? -1 : use.meaning().ordinal());
    }

    private void decide(LayerMeaning chosen) {
        List<LayerUse> uses = table.selection();
        boolean forShop = keep.getSelection();
        boolean any = false;
        for (LayerUse use : uses) {
            if (use.meaning() != chosen) {
                LayerRule rule = drawing.decide(use, chosen, all);
                any = true;
                if (forShop) {
                    intake.keep(drawing, rule);
                }
            }
        }
        if (any) {
            intake.readFirst(drawing);
        }
    }

    private void readHidden(boolean read) {
        if (drawing != null) {
            drawing.choice().setHiddenLayers(read);
            intake.readFirst(drawing);
        }
    }

    void show(IntakeDrawing shown, DrawingReading reading) {
        List<String> selected = table.selection().stream().map(LayerList::key).toList();
        drawing = shown;
        all = reading == null || reading.drawing() == null ? List.of() : reading.drawing().layers();
        table.setRows(all);
        table.markOnly(all.stream().filter(u -> selected.contains(key(u))).toList());
        hidden.setEnabled(reading != null && reading.drawing() != null);
        hidden.setSelection(shown != null && shown.choice().isHiddenLayers());
        selected(table.first());
    }

    private static String key(LayerUse use) {
        return use.layer() + "|" + use.colour() + "|" + use.lineType() + "|" + use.hidden();
    }

    /** The layers shown, for tests. */
    public DataTable<LayerUse> table() {
        return table;
    }
}
