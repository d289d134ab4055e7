// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

import punchwright.ui.job.Messages;
import punchwright.ui.job.NewRecords;
import punchwright.ui.session.Session;

/** Makes an order. */
public final class NewOrderHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
        if (Session.current().isPresent()) {
            NewRecords.order(window);
        } else {
            Messages.say(window.getShell(), "command.needsWorkspace");
        }
        return null;
    }
}
