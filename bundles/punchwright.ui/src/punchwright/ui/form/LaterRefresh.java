// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import org.eclipse.swt.widgets.Control;

/** Shows a widget anew once after any number of changes, when the event that made them is over. */
public final class LaterRefresh {

    private final Control widget;
    private final Runnable refresh;
    private boolean queued;

    public LaterRefresh(Control widget, Runnable refresh) {
        this.widget = widget;
        this.refresh = refresh;
    }

    /** Asks for it; call it on the UI thread. Does nothing when it is asked for already or the widget is gone. */
    public void queue() {
        if (!queued && !widget.isDisposed()) {
            queued = true;
            widget.getDisplay().asyncExec(() -> {
                queued = false;
                if (!widget.isDisposed()) {
                    refresh.run();
                }
            });
        }
    }
}
