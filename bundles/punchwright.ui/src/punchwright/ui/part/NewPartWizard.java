// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.part;

import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Shell;

import punchwright.model.work.Part;
import punchwright.ui.job.FreeIds;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** A part that is never drawn: its kind and sizes, with a picture that follows. */
public final class NewPartWizard extends Wizard {

    private final Session session;
    private final DimensionsPage page;

    private NewPartWizard(Session session) {
        this.session = session;
        page = new DimensionsPage(session);
        setWindowTitle(Texts.of("newPart.title"));
    }

    /** The wizard in its dialog; the caller opens it. */
    public static WizardDialog dialog(Shell parent, Session session) {
        WizardDialog dialog = new WizardDialog(parent, new NewPartWizard(session)) {
            @Override
            protected Point getInitialSize() {
                return new Point(1120, 760);
            }
        };
        dialog.setHelpAvailable(false);
        return dialog;
    }

    @Override
    public void addPages() {
        addPage(page);
    }

    /** Kind, sizes and picture. */
    public DimensionsPage page() {
        return page;
    }

    /** The part; with its identifier once the wizard is finished. */
    public Part part() {
        return page.part();
    }

    @Override
    public boolean performFinish() {
        Part part = page.part();
        session.forget(part);
        part.setId(FreeIds.from(part.getNumber(), "part", id -> session.workspace().item(id).isPresent()));
        if (part.getName() == null || part.getName().isBlank()) {
            part.setName(part.getNumber());
        }
        return true;
    }

    @Override
    public boolean performCancel() {
        session.forget(page.part());
        return true;
    }
}
