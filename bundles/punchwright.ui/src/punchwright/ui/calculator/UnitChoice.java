// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.calculator;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

import punchwright.engine.press.Quantity;
import punchwright.ui.table.Accessibles;

/** A choice among the units of one quantity. */
final class UnitChoice {

    private final Quantity quantity;
    private final Combo combo;

    /** @param name what is heard */
    UnitChoice(Composite parent, Quantity quantity, String name, Quantity.Unit first) {
        this.quantity = quantity;
        combo = new Combo(parent, SWT.DROP_DOWN | SWT.READ_ONLY);
        quantity.units().forEach(u -> combo.add(u.sign()));
        combo.select(quantity.units().indexOf(first));
        Accessibles.name(combo, name);
    }

    Combo control() {
        return combo;
    }

    Quantity.Unit unit() {
        return quantity.units().get(combo.getSelectionIndex());
    }

    /** Selects the unit with this sign, as a person does; for tests. */
    void select(String sign) {
        combo.select(combo.indexOf(sign));
        combo.notifyListeners(SWT.Selection, new org.eclipse.swt.widgets.Event());
    }
}
