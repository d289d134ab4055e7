// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

import punchwright.model.shop.Library;
import punchwright.ui.job.Messages;
import punchwright.ui.job.NewRecords;

/** Removes the order, part or assembly selected in the explorer. */
public final class RemoveFileHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
        EObject chosen = Chosen.object(window);
        if (chosen == null || chosen instanceof Library) {
            Messages.say(window.getShell(), "command.needsFile");
        } else {
            NewRecords.remove(window, chosen);
        }
        return null;
    }
}
