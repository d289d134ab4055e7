// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

import punchwright.ui.job.OpenWorkspace;

/** Asks for a workspace folder and opens it. */
public final class OpenWorkspaceHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        OpenWorkspace.ask(HandlerUtil.getActiveWorkbenchWindow(event));
        return null;
    }
}
