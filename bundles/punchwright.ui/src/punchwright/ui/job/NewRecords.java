// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.time.LocalDate;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.dialogs.IInputValidator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.files.WorkspaceException;
import punchwright.model.shop.Named;
import punchwright.model.work.Assembly;
import punchwright.model.work.Order;
import punchwright.model.work.WorkFactory;
import punchwright.ui.editor.Editors;
import punchwright.ui.editor.FileInput;
import punchwright.ui.form.Uses;
import punchwright.ui.part.NewPartWizard;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** Makes and removes orders, parts and assemblies, each with a file of its own. */
public final class NewRecords {

    private NewRecords() {
    }

    /** Asks for a number and makes an order. */
    public static void order(IWorkbenchWindow window) {
        Session session = Session.current().orElseThrow();
        String number = ask(window, "newOrder.title", "newOrder.message");
        if (number != null) {
            Order order = WorkFactory.eINSTANCE.createOrder();
            order.setId(FreeIds.from(number, "order", id -> session.workspace().order(id).isPresent()));
            order.setNumber(number);
            order.setName(number);
            order.setReceived(LocalDate.now().toString());
            put(window, session, order);
        }
    }

    /** Asks for a number and makes an assembly. */
    public static void assembly(IWorkbenchWindow window) {
        Session session = Session.current().orElseThrow();
        String number = ask(window, "newAssembly.title", "newAssembly.message");
        if (number != null) {
            Assembly assembly = WorkFactory.eINSTANCE.createAssembly();
            assembly.setId(FreeIds.from(number, "assembly", id -> session.workspace().item(id).isPresent()));
            assembly.setNumber(number);
            assembly.setName(number);
            put(window, session, assembly);
        }
    }

    /** Asks for what a part needs and makes one without a drawing. */
    public static void part(IWorkbenchWindow window) {
        Session session = Session.current().orElseThrow();
        WizardDialog dialog = NewPartWizard.dialog(window.getShell(), session);
        dialog.create();
        NewPartWizard wizard = (NewPartWizard) dialog.getCurrentPage().getWizard();
        if (dialog.open() == Window.OK) {
            put(window, session, wizard.part());
        }
    }

    private static String ask(IWorkbenchWindow window, String title, String message) {
        IInputValidator notEmpty = text -> text.isBlank() ? Texts.of("newPart.noNumber") : null;
        InputDialog dialog = new InputDialog(window.getShell(), Texts.of(title), Texts.of(message), "", notEmpty);
        return dialog.open() == Window.OK ? dialog.getValue().strip() : null;
    }

    private static void put(IWorkbenchWindow window, Session session, EObject made) {
        try {
            session.workspace().put(made);
            session.workspace().save(made);
            Session.changed();
            Editors.open(made);
        } catch (WorkspaceException e) {
            Messages.show(window.getShell(), e);
        }
    }

    /** Removes an order, item or plan after asking; one that others use stays, and the message says who. */
    public static void remove(IWorkbenchWindow window, EObject root) {
        Session session = Session.current().orElseThrow();
        String name = root instanceof Named named ? named.getName() : "";
        List<String> users = Uses.of(root);
        if (!users.isEmpty()) {
            MessageDialog.openInformation(window.getShell(), Texts.of("remove.title"),
                    Texts.of("remove.used", name, String.join(", ", users)));
            return;
        }
        if (MessageDialog.openConfirm(window.getShell(), Texts.of("remove.title"), Texts.of("remove.ask", name))) {
            try {
                IEditorPart editor = window.getActivePage().findEditor(new FileInput(root));
                if (editor != null) {
                    window.getActivePage().closeEditor(editor, false);
                }
                session.forget(root);
                session.workspace().remove(root);
                Session.changed();
            } catch (WorkspaceException e) {
                Messages.show(window.getShell(), e);
            }
        }
    }
}
