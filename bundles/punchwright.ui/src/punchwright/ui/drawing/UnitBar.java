// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.Locale;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.drawing.UnitChoice;
import punchwright.model.work.DrawingUnit;
import punchwright.planner.intake.DrawingReading;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** The unit of a drawing: what it says or what is guessed and why, and the size that each choice gives. */
final class UnitBar extends Composite {

    private static final double INCH = 25.4;
    private static final DrawingUnit[] UNITS = { DrawingUnit.FROM_FILE, DrawingUnit.MM, DrawingUnit.INCH };

    private final Intake intake;
    private final Combo unit;
    private final Label why;
    private IntakeDrawing drawing;

    UnitBar(Composite parent, Intake intake, boolean several) {
        super(parent, SWT.NONE);
        this.intake = intake;
        GridLayoutFactory.fillDefaults().numColumns(several ? 4 : 3).spacing(8, 0).applyTo(this);
        Label label = new Label(this, SWT.NONE);
        label.setText(Texts.of("unit.label"));
        unit = new Combo(this, SWT.READ_ONLY);
        Accessibles.name(unit, Texts.of("unit.name"));
        unit.setData("field", "unit");
        GridDataFactory.fillDefaults().hint(400, SWT.DEFAULT).applyTo(unit);
        unit.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> choose(UNITS[unit.getSelectionIndex()])));
        why = new Label(this, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(why);
        if (several) {
            Button all = new Button(this, SWT.PUSH);
            all.setText(Texts.of("intake.sameForAll"));
            all.setToolTipText(Texts.of("intake.sameForAll.help"));
            all.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> intake.sameForAll(drawing)));
        }
    }

    private void choose(DrawingUnit chosen) {
        if (drawing != null && drawing.choice().getUnit() != chosen) {
            drawing.choice().setUnit(chosen);
            intake.readFirst(drawing);
        }
    }

    void show(IntakeDrawing shown, DrawingReading reading) {
        drawing = shown;
        DrawingResult result = reading == null ? null : reading.drawing();
        unit.setEnabled(result != null);
        if (result == null) {
            unit.setItems();
            why.setText("");
            return;
        }
        UnitChoice choice = result.unit();
        boolean asked = choice.source() == UnitChoice.Source.ASKED_FOR;
        unit.setItems(asked ? Texts.of("unit.fromFile") : Texts.of("unit.fromFile.as", name(choice.mmPerUnit()), size(choice,
                choice.mmPerUnit())),
                Texts.of("unit.mm", size(choice, 1)), Texts.of("unit.inch", size(choice, INCH)));
        unit.select(java.util.Arrays.asList(UNITS).indexOf(shown.choice().getUnit()));
        why.setText(choice.findingIfAny().map(f -> f.message(Locale.getDefault()))
                .orElse(Texts.find("unit.source." + choice.source().name().toLowerCase(Locale.ROOT))).replace("&", "&&"));
        why.setToolTipText(why.getText());
    }

    private static String size(UnitChoice choice, double mmPerUnit) {
        return Numbers.fixed(choice.widthMm(mmPerUnit), 1) + " \u00d7 " + Numbers.fixed(choice.heightMm(mmPerUnit), 1);
    }

    private static String name(double mmPerUnit) {
        return mmPerUnit == 1 ? Texts.of("unit.name.mm") : mmPerUnit == INCH ? Texts.of("unit.name.inch")
                : Texts.of("unit.name.other", Numbers.plain(mmPerUnit));
    }
}
