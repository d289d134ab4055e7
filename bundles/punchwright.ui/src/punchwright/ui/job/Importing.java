// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.window.Window;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.shop.Named;
import punchwright.ui.drawing.ImportWizard;
import punchwright.ui.editor.Editors;
import punchwright.ui.session.Session;

/** Takes drawings in as parts: opens the wizard, and afterwards what came of it. */
public final class Importing {

    private Importing() {
    }

    /** Asks for files and folders first. */
    public static void ask(IWorkbenchWindow window) {
        ask(window, List.of());
    }

    /** Begins with files and folders that are chosen already. */
    public static void ask(IWorkbenchWindow window, List<Path> filesAndFolders) {
        Session session = Session.current().orElseThrow();
        WizardDialog dialog = ImportWizard.dialog(window.getShell(), session, filesAndFolders);
        dialog.create();
        ImportWizard wizard = (ImportWizard) dialog.getCurrentPage().getWizard();
        if (dialog.open() == Window.OK && wizard.takenIn() != null) {
            List<Named> records = wizard.takenIn().records();
            Editors.open(records.get(records.size() - 1));
        }
    }
}
