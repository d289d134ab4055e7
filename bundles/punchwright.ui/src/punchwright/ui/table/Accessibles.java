// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.table;

import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Control;

/** Names for those who hear the screen. */
public final class Accessibles {

    private Accessibles() {
    }

    /** Gives a control its accessible name. */
    public static void name(Control control, String name) {
        control.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent e) {
                e.result = name;
            }
        });
    }
}
