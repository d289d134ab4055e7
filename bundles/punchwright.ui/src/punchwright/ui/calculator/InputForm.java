// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.calculator;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import punchwright.engine.press.Basis;
import punchwright.engine.press.Calculation;
import punchwright.engine.press.Input;
import punchwright.engine.press.Quantity;
import punchwright.ui.text.Texts;

/** The fields of one question. Values and units typed for one question are kept for the next that asks the same. */
final class InputForm {

    private static final String LIMIT = "limit";

    private final ScrolledComposite scroll;
    private final Composite body;
    private final Runnable changed;
    private final List<InputField> fields = new ArrayList<>();
    private final Map<String, Double> kept = new HashMap<>();
    private final Map<Quantity, Quantity.Unit> units = new EnumMap<>(Quantity.class);
    private boolean filling;

    InputForm(Composite parent, Runnable changed) {
        this.changed = changed;
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        body = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(6, 3).applyTo(body);
        scroll.setContent(body);
        scroll.addListener(SWT.Resize, e -> fit());
        for (Quantity q : Quantity.values()) {
            units.put(q, q == Quantity.FORCE ? q.units().get(1) : q.units().getFirst());
        }
    }

    Control control() {
        return scroll;
    }

    List<InputField> fields() {
        return fields;
    }

    /** Makes the fields of a question; a limit is not typed but chosen. */
    void show(Calculation question) {
        keep();
        filling = true;
        for (Control child : body.getChildren()) {
            child.dispose();
        }
        fields.clear();
        for (Input i : question.inputs()) {
            if (!i.name().equals(LIMIT)) {
                InputField field = new InputField(body, i, units.get(i.quantity()), this::changed);
                if (kept.containsKey(i.name())) {
                    field.set(kept.get(i.name()));
                }
                fields.add(field);
            }
        }
        filling = false;
        body.layout(true, true);
        fit();
    }

    private void changed() {
        if (!filling) {
            changed.run();
        }
    }

    private void fit() {
        scroll.setMinSize(0, body.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
    }

    private void keep() {
        for (InputField f : fields) {
            units.put(f.input().quantity(), f.unit());
            f.value().ifPresentOrElse(v -> kept.put(f.input().name(), v), () -> kept.remove(f.input().name()));
        }
    }

    /** Shows in empty fields what stands for them. */
    void hint(Basis basis) {
        fields.forEach(f -> f.hint(f.input().standsFor(basis)));
    }

    /**
     * The values typed, in the units used inside.
     *
     * @throws IllegalArgumentException when a field holds no number; the message names it
     */
    Map<String, Double> values() {
        Map<String, Double> values = new TreeMap<>();
        for (InputField f : fields) {
            OptionalDouble value = f.value();
            if (value.isPresent()) {
                values.put(f.input().name(), value.getAsDouble());
            } else if (!f.isEmpty()) {
                throw new IllegalArgumentException(Texts.of("calculator.noNumber", f.input().label(Locale.getDefault()),
                        f.control().getText()));
            }
        }
        return values;
    }

    /** Labels of the inputs that are still missing. */
    List<String> missing(Basis basis) {
        return fields.stream().filter(f -> f.isEmpty() && Double.isNaN(f.input().standsFor(basis)))
                .map(f -> f.input().label(Locale.getDefault())).toList();
    }
}
