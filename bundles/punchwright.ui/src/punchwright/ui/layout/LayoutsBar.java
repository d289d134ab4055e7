// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import punchwright.model.shop.Machine;
import punchwright.ui.form.MachineCombo;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** The line above the layouts: machine, what the program does for them, and how far it is. */
final class LayoutsBar extends Composite {

    private final MachineCombo machine;
    private final Button layOut;
    private final Button nest;
    private final Button fill;
    private final Button stop;
    private final Label busy;

    LayoutsBar(Composite parent, List<Machine> machines) {
        super(parent, SWT.NONE);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.center = true;
        row.spacing = 8;
        row.marginLeft = 8;
        setLayout(row);
        machine = new MachineCombo(this, "layouts", machines);
        layOut = button("layouts.layOut", Icons.LAYOUT);
        nest = button("layouts.nest", Icons.NEST);
        fill = button("layouts.fill", Icons.FILL);
        stop = button("layouts.stop", Icons.STOP);
        stop.setEnabled(false);
        busy = new Label(this, SWT.NONE);
    }

    private Button button(String key, Icons icon) {
        Button button = new Button(this, SWT.PUSH);
        button.setText(Texts.of(key));
        button.setImage(icon.image());
        button.setToolTipText(Texts.of(key + ".help"));
        return button;
    }

    /** The machine chosen, or null. */
    Machine machine() {
        return machine.chosen();
    }

    void onMachine(Runnable what) {
        machine.onChange(what);
    }

    /** Chooses a machine as a person does. */
    void choose(Machine wanted) {
        machine.choose(wanted);
    }

    void onAction(Runnable laidOut, Runnable nested, Runnable filled, Runnable stopped) {
        layOut.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> laidOut.run()));
        nest.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> nested.run()));
        fill.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> filled.run()));
        stop.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> stopped.run()));
    }

    /** Says what is going on, empty for nothing; {@code working} gives the stop button. */
    void say(String words, boolean working) {
        busy.setText(words);
        stop.setEnabled(working);
        busy.requestLayout();
    }

    /** Which buttons make sense: with a machine, with a sheet that is shown. */
    void enable(boolean hasOrder, boolean hasSheet) {
        layOut.setEnabled(hasOrder);
        nest.setEnabled(hasSheet);
        fill.setEnabled(hasSheet);
    }
}
