// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.calculator;

import java.util.Locale;
import java.util.OptionalDouble;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import punchwright.engine.press.Input;
import punchwright.engine.press.Quantity;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/**
 * One input of a question: label, value, unit. An empty field stands for what the material or custom gives; its hint shows it.
 */
final class InputField {

    private static final int WIDTH = 84;

    private final Input input;
    private final Text text;
    private final UnitChoice units;
    private Quantity.Unit unit;

    InputField(Composite parent, Input input, Quantity.Unit first, Runnable changed) {
        this.input = input;
        unit = first;
        String name = input.label(Locale.getDefault());
        Label label = new Label(parent, SWT.WRAP);
        label.setText(Character.toUpperCase(name.charAt(0)) + name.substring(1) + "  " + input.symbol());
        label.setToolTipText(range());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(150, SWT.DEFAULT).applyTo(label);
        text = new Text(parent, SWT.BORDER | SWT.RIGHT);
        text.setData("field", input.name());
        text.setToolTipText(range());
        Accessibles.name(text, name);
        GridDataFactory.fillDefaults().hint(WIDTH, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(text);
        if (input.quantity().units().size() > 1) {
            units = new UnitChoice(parent, input.quantity(), Texts.of("calculator.unit", name), first);
            GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).applyTo(units.control());
            units.control().setData("field", input.name() + ".unit");
            units.control().addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> convert(changed)));
        } else {
            units = null;
            new Label(parent, SWT.NONE).setText(input.quantity().sign());
        }
        text.addModifyListener(e -> changed.run());
    }

    /** "0.4 to 8 mm": where the formulas hold. */
    private String range() {
        return Texts.of("calculator.range", Numbers.plain(input.least()), Numbers.plain(input.largest()),
                input.quantity().sign());
    }

    /** Another unit shows the same value. */
    private void convert(Runnable changed) {
        OptionalDouble value = value();
        unit = units.unit();
        value.ifPresent(this::set);
        changed.run();
    }

    Input input() {
        return input;
    }

    Text control() {
        return text;
    }

    Quantity.Unit unit() {
        return unit;
    }

    boolean isEmpty() {
        return text.getText().isBlank();
    }

    /** In the unit used inside; empty for an empty field and for what is no number. */
    OptionalDouble value() {
        OptionalDouble typed = Numbers.parse(text.getText());
        return typed.isPresent() ? OptionalDouble.of(typed.getAsDouble() * unit.factor()) : OptionalDouble.empty();
    }

    /** Shows a value given in the unit used inside. */
    void set(double value) {
        text.setText(Figures.text(value / unit.factor()));
    }

    /** What stands for an empty field, given in the unit used inside; NaN for nothing. */
    void hint(double value) {
        text.setMessage(Double.isNaN(value) ? "" : Figures.text(value / unit.factor()));
    }
}
