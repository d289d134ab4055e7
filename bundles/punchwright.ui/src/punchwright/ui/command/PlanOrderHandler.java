// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

import punchwright.model.work.Order;
import punchwright.ui.editor.Editors;
import punchwright.ui.job.Messages;
import punchwright.ui.order.OrderEditor;

/** Plans the chosen order: in its editor on the machines selected there, else its editor opens first. */
public final class PlanOrderHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
        if (window.getActivePage().getActivePart() instanceof OrderEditor editor) {
            editor.choice().plan();
            return null;
        }
        Order order = Chosen.order(window);
        if (order == null) {
            Messages.say(window.getShell(), "command.needsOrder");
        } else {
            Editors.open(order);
        }
        return null;
    }
}
