// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.calculator;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import punchwright.engine.press.Basis;
import punchwright.engine.press.MaterialGroup;
import punchwright.model.shop.Material;
import punchwright.planner.convert.MaterialReader;
import punchwright.ui.session.Session;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;

/** The sheet that a question is about: a material of the shop, or a group alone with values typed in. */
final class SheetChoice {

    private final Combo combo;
    private List<Material> materials = List.of();

    SheetChoice(Composite parent, Runnable changed) {
        new Label(parent, SWT.NONE).setText(Texts.of("calculator.sheet"));
        combo = new Combo(parent, SWT.DROP_DOWN | SWT.READ_ONLY);
        combo.setData("field", "sheet");
        combo.setVisibleItemCount(20);
        Accessibles.name(combo, Texts.of("calculator.sheet"));
        GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).applyTo(combo);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> changed.run()));
        fill();
    }

    Combo control() {
        return combo;
    }

    /** Takes the materials of the open workspace; what was chosen stays chosen where it is still there. */
    void fill() {
        String chosen = combo.getText();
        materials = Session.current().map(s -> List.copyOf(s.workspace().library().getMaterials())).orElse(List.of());
        combo.removeAll();
        materials.forEach(m -> combo.add(m.getName() == null || m.getName().isBlank() ? m.getId() : m.getName()));
        for (MaterialGroup g : MaterialGroup.values()) {
            combo.add(Texts.of("calculator.group", groupName(g)));
        }
        int index = combo.indexOf(chosen);
        combo.select(Math.max(0, index));
    }

    /** The group's name as the model has it. */
    private static String groupName(MaterialGroup group) {
        return Texts.of(punchwright.model.shop.MaterialGroup.getByName(group.name()));
    }

    Basis basis() {
        int i = combo.getSelectionIndex();
        return i < materials.size() ? Basis.of(MaterialReader.read(materials.get(i)))
                : Basis.of(MaterialGroup.values()[i - materials.size()]);
    }
}
