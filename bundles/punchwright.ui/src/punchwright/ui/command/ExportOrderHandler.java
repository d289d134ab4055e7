// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

import punchwright.model.work.Order;
import punchwright.ui.job.Exporting;
import punchwright.ui.job.Messages;

/** Writes the sheets of the chosen order. */
public final class ExportOrderHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
        Order order = Chosen.order(window);
        if (order == null) {
            Messages.say(window.getShell(), "command.needsOrder");
        } else {
            Exporting.start(window, order);
        }
        return null;
    }
}
