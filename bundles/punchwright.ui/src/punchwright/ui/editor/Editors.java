// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.editor;

import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.model.work.Order;
import punchwright.ui.job.Messages;

/** Opens the editor of an object and goes to it there. */
public final class Editors {

    private Editors() {
    }

    /** Opens the file of an object, shows the object, and returns the editor. */
    public static Optional<FileEditor> open(EObject object) {
        IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
        if (window == null || window.getActivePage() == null || object == null) {
            return Optional.empty();
        }
        EObject root = EcoreUtil.getRootContainer(object);
        try {
            IEditorPart editor = window.getActivePage().openEditor(new FileInput(root), idFor(root), true,
                    IWorkbenchPage.MATCH_INPUT);
            if (editor instanceof FileEditor fileEditor) {
                if (object != root) {
                    fileEditor.reveal(object);
                }
                return Optional.of(fileEditor);
            }
        } catch (PartInitException e) {
            Messages.show(window.getShell(), e);
        }
        return Optional.empty();
    }

    private static String idFor(EObject root) {
        return switch (root) {
            case Library l -> "punchwright.ui.library";
            case Order o -> "punchwright.ui.order";
            case Plan p -> "punchwright.ui.plan";
            default -> "punchwright.ui.part";
        };
    }
}
