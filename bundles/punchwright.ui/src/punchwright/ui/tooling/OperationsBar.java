// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import punchwright.model.shop.Machine;
import punchwright.model.work.Part;
import punchwright.ui.form.MachineCombo;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** The line above the operations: machine, material, and what can be done with the tool that is selected. */
final class OperationsBar extends Composite {

    private final MachineCombo machine;
    private final Label busy;
    private final Button pin;
    private final Button forbid;
    private final Button release;

    OperationsBar(Composite parent, Part part, List<Machine> machines) {
        super(parent, SWT.NONE);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.center = true;
        row.spacing = 8;
        row.marginLeft = 8;
        setLayout(row);
        machine = new MachineCombo(this, "operations", machines);
        Label sheet = new Label(this, SWT.NONE);
        sheet.setText(part.getMaterial() == null ? "" : Texts.of("operations.sheet", part.getMaterial().getName(),
                Numbers.plain(part.getThicknessMm())));
        pin = button("pin", "P");
        forbid = button("forbid", "F");
        release = button("release", Texts.of("key.delete"));
        busy = new Label(this, SWT.NONE);
    }

    private Button button(String key, String shortcut) {
        Button button = new Button(this, SWT.PUSH);
        button.setText(Texts.of("operations." + key));
        button.setToolTipText(Texts.of("operations." + key + ".help", shortcut));
        return button;
    }

    /** The machine chosen, or null. */
    Machine machine() {
        return machine.chosen();
    }

    void onMachine(Runnable what) {
        machine.onChange(what);
    }

    void onAction(Runnable pinned, Runnable forbidden, Runnable released) {
        pin.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> pinned.run()));
        forbid.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> forbidden.run()));
        release.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> released.run()));
    }

    /** Names the tool that the buttons act on; null disables them. */
    void tool(String name, boolean canRelease) {
        pin.setText(name == null ? Texts.of("operations.pin") : Texts.of("operations.pin.tool", name));
        forbid.setText(name == null ? Texts.of("operations.forbid") : Texts.of("operations.forbid.tool", name));
        pin.setEnabled(name != null);
        forbid.setEnabled(name != null);
        release.setEnabled(canRelease);
        pin.requestLayout();
        forbid.requestLayout();
    }

    void busy(boolean working) {
        busy.setText(working ? Texts.of("operations.working") : "");
        busy.requestLayout();
    }
}
