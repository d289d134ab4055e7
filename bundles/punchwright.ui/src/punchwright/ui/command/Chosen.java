// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.command;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.plan.Plan;
import punchwright.model.work.Order;
import punchwright.ui.editor.FileInput;
import punchwright.ui.explorer.ExplorerView;

/** What a command is about: the selection of the explorer when it is active, else what the active editor shows. */
final class Chosen {

    private Chosen() {
    }

    /** The order chosen; for a plan its order; null when there is none. */
    static Order order(IWorkbenchWindow window) {
        if (window.getActivePage() == null) {
            return null;
        }
        Order selected = orderOf(explorerSelection(window));
        if (selected != null) {
            return selected;
        }
        IEditorPart editor = window.getActivePage().getActiveEditor();
        return editor != null && editor.getEditorInput() instanceof FileInput input ? orderOf(input.root()) : null;
    }

    /** The object selected in the explorer; null when there is none or the explorer is not active. */
    static EObject object(IWorkbenchWindow window) {
        return window.getActivePage() == null ? null : explorerSelection(window);
    }

    private static EObject explorerSelection(IWorkbenchWindow window) {
        if (window.getActivePage().getActivePart() instanceof ExplorerView explorer
                && explorer.viewer().getSelection() instanceof IStructuredSelection selection) {
            return ExplorerView.objectOf(selection.getFirstElement());
        }
        return null;
    }

    private static Order orderOf(EObject object) {
        return object instanceof Order order ? order : object instanceof Plan plan ? plan.getOrder() : null;
    }
}
