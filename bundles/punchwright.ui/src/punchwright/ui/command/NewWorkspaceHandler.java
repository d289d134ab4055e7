// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.command;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

import punchwright.ui.job.OpenWorkspace;

/** Asks for a folder and makes an empty workspace in it. */
public final class NewWorkspaceHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) {
        OpenWorkspace.askNew(HandlerUtil.getActiveWorkbenchWindow(event));
        return null;
    }
}
