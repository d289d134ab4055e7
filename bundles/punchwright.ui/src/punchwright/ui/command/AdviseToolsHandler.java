// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

import punchwright.ui.job.Messages;
import punchwright.ui.tooling.AdviceView;

/** Shows the view that says which tool to buy. */
public final class AdviseToolsHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindow(event);
        try {
            window.getActivePage().showView(AdviceView.ID);
        } catch (PartInitException e) {
            Messages.show(window.getShell(), e);
        }
        return null;
    }
}
