// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;

import punchwright.model.shop.Machine;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;

/** Choice of a machine with its label; each kind of page begins with the machine that was chosen last on it. */
public final class MachineCombo {

    /** Identifier of the machine chosen last, by kind of page. */
    private static final Map<String, String> LAST = new LinkedHashMap<>();

    private final String page;
    private final List<Machine> machines;
    private final Combo combo;

    public MachineCombo(Composite parent, String page, List<Machine> machines) {
        this.page = page;
        this.machines = List.copyOf(machines);
        new Label(parent, SWT.NONE).setText(Texts.of("operations.machine"));
        combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        Accessibles.name(combo, Texts.of("operations.machine"));
        this.machines.forEach(m -> combo.add(String.valueOf(m.getName())));
        combo.select(Math.max(0, this.machines.stream().map(Machine::getId).toList().indexOf(LAST.getOrDefault(page, ""))));
    }

    /** The machine chosen, or null. */
    public Machine chosen() {
        int index = combo.getSelectionIndex();
        return index < 0 || index >= machines.size() ? null : machines.get(index);
    }

    public void onChange(Runnable what) {
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> {
            LAST.put(page, chosen().getId());
            what.run();
        }));
    }

    /** Chooses a machine as a person does. */
    public void choose(Machine wanted) {
        if (machines.contains(wanted)) {
            combo.select(machines.indexOf(wanted));
            combo.notifyListeners(SWT.Selection, new Event());
        }
    }
}
