// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import punchwright.model.shop.Material;
import punchwright.model.shop.ShopPackage;
import punchwright.model.work.WorkPackage;
import punchwright.ui.form.Units;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** The values of the selected parts: what is chosen here goes to all of them; number and name only to one. */
public final class PartFields extends Composite {

    private final List<Material> materials;
    private final Label heading;
    private final Text number;
    private final Text name;
    private final Combo material;
    private final Combo thickness;
    private final Text quantity;
    private final Button notes;
    private List<IntakePart> parts = List.of();
    private Runnable onChange = () -> { };
    private boolean showing;

    PartFields(Composite parent, List<Material> materials) {
        super(parent, SWT.NONE);
        this.materials = materials;
        GridLayoutFactory.fillDefaults().numColumns(6).spacing(8, 5).applyTo(this);
        heading = new Label(this, SWT.NONE);
        GridDataFactory.fillDefaults().span(6, 1).grab(true, false).applyTo(heading);
        number = text(WorkPackage.Literals.ITEM__NUMBER, "number", IntakePart::setNumber);
        name = text(ShopPackage.Literals.NAMED__NAME, "name", IntakePart::setName);
        quantity = text(WorkPackage.Literals.ORDER_LINE__QUANTITY, "quantity", (p, t) -> p.setQuantity(whole(t)));
        material = combo(WorkPackage.Literals.PART__MATERIAL, "material", SWT.READ_ONLY);
        materials.forEach(m -> material.add(m.getName()));
        material.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> chooseMaterial()));
        thickness = combo(WorkPackage.Literals.PART__THICKNESS_MM, "thicknessMm", SWT.NONE);
        thickness.addModifyListener(e -> change(p -> p.setThicknessMm(figure(thickness.getText()))));
        notes = new Button(this, SWT.PUSH);
        notes.setText(Texts.of("intake.takeNotes"));
        notes.setToolTipText(Texts.of("intake.takeNotes.help"));
        GridDataFactory.fillDefaults().span(2, 1).align(SWT.END, SWT.CENTER).applyTo(notes);
        notes.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> {
            change(IntakePart::takeOverNotes);
            show(parts);
        }));
        show(List.of());
    }

    private interface Setting {
        void set(IntakePart part, String text);
    }

    private Text text(EStructuralFeature feature, String field, Setting setting) {
        label(feature);
        Text text = new Text(this, SWT.BORDER);
        name(text, feature, field);
        text.addModifyListener(e -> change(p -> setting.set(p, text.getText())));
        return text;
    }

    private Combo combo(EStructuralFeature feature, String field, int style) {
        label(feature);
        Combo combo = new Combo(this, style);
        name(combo, feature, field);
        return combo;
    }

    private void label(EStructuralFeature feature) {
        new Label(this, SWT.NONE).setText(Units.header(Texts.of(feature), Units.of(feature, "")));
    }

    private static void name(Control control, EStructuralFeature feature, String field) {
        Accessibles.name(control, Texts.of(feature));
        control.setData("field", field);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(control);
    }

    private void chooseMaterial() {
        Material chosen = material.getSelectionIndex() < 0 ? null : materials.get(material.getSelectionIndex());
        change(p -> p.setMaterial(chosen));
        thicknesses(chosen);
    }

    /** Offers the thicknesses of a material; what was given stays. */
    private void thicknesses(Material chosen) {
        boolean before = showing;
        showing = true;
        String given = thickness.getText();
        thickness.setItems(chosen == null ? new String[0] : chosen.getThicknessesMm().stream().map(Numbers::plain)
                .toArray(String[]::new));
        thickness.setText(given);
        showing = before;
    }

    private void change(Consumer<IntakePart> what) {
        if (!showing) {
            parts.forEach(what);
            onChange.run();
        }
    }

    /** Told after every change. */
    void onChange(Runnable what) {
        onChange = what;
    }

    /** Shows the values that the parts have in common. */
    void show(List<IntakePart> selected) {
        boolean same = parts.equals(selected);
        parts = List.copyOf(selected);
        showing = true;
        boolean one = parts.size() == 1;
        heading.setText(parts.isEmpty() ? Texts.of("intake.fields.none") : one ? Texts.of("intake.fields.one",
                parts.get(0).number())
                : Texts.of("form.together", parts.size()));
        for (Control control : new Control[] { quantity, material, thickness }) {
            control.setEnabled(!parts.isEmpty());
        }
        number.setEnabled(one);
        name.setEnabled(one);
        set(number, one ? parts.get(0).number() : "", same);
        set(name, one ? parts.get(0).name() : "", same);
        set(quantity, common(p -> Integer.toString(p.quantity())), same);
        Material shared = parts.isEmpty() ? null : parts.get(0).material();
        boolean allAlike = parts.stream().allMatch(p -> Objects.equals(p.material(), shared));
        material.select(allAlike && shared != null ? materials.indexOf(shared) : -1);
        if (allAlike && shared == null) {
            material.deselectAll();
        }
        thicknesses(allAlike ? shared : null);
        String mm = common(p -> PartsPage.figure(p.thicknessMm()));
        if (!same || !thickness.isFocusControl()) {
            thickness.setText(mm);
        }
        notes.setEnabled(parts.stream().anyMatch(p -> !p.drawing().notesSaid().isEmpty()));
        showing = false;
    }

    /** A field in which a person types is left alone. */
    private static void set(Text field, String text, boolean same) {
        if (!(same && field.isFocusControl()) && !field.getText().equals(text)) {
            field.setText(text);
        }
    }

    private String common(java.util.function.Function<IntakePart, String> value) {
        List<String> values = parts.stream().map(value).distinct().toList();
        return values.size() == 1 ? values.get(0) : "";
    }

    private static int whole(String text) {
        OptionalDouble figure = Numbers.parse(text);
        return figure.isPresent() && figure.getAsDouble() == Math.rint(figure.getAsDouble()) && figure.getAsDouble() < 1e6
                ? (int) figure.getAsDouble() : 0;
    }

    private static double figure(String text) {
        return Numbers.parse(text).orElse(0);
    }
}
