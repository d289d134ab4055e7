// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.jface.dialogs.IPageChangingListener;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Shell;

import punchwright.ui.job.Messages;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** Files and folders, then what they show, then what the parts are called and made of. */
public final class ImportWizard extends Wizard {

    private static final int WIDTH = 1240;
    private static final int HEIGHT = 820;

    private final Session session;
    private final Intake intake;
    private final FilesPage files;
    private final PreviewPage preview;
    private final PartsPage parts;
    private TakenIn takenIn;

    private ImportWizard(Session session) {
        this.session = session;
        intake = new Intake(session.workspace().library());
        files = new FilesPage(intake);
        preview = new PreviewPage(intake);
        parts = new PartsPage(intake, session);
        setWindowTitle(Texts.of("import.title"));
        setNeedsProgressMonitor(true);
    }

    /** A wizard in its dialog, with files and folders to begin with; the caller opens it. */
    public static WizardDialog dialog(Shell parent, Session session, List<Path> filesAndFolders) {
        ImportWizard wizard = new ImportWizard(session);
        WizardDialog dialog = new WizardDialog(parent, wizard) {
            @Override
            protected Point getInitialSize() {
                return new Point(Math.min(WIDTH, parent.getDisplay().getPrimaryMonitor().getClientArea().width - 20),
                        Math.min(HEIGHT, parent.getDisplay().getPrimaryMonitor().getClientArea().height - 20));
            }
        };
        dialog.setHelpAvailable(false);
        IPageChangingListener unread = e -> {
            if (e.getCurrentPage() == wizard.files && e.getTargetPage() != wizard.files && wizard.intake.reader().isBusy()) {
                e.doit = wizard.files.mayLeave();
            }
        };
        dialog.addPageChangingListener(unread);
        if (!filesAndFolders.isEmpty()) {
            wizard.intake.add(filesAndFolders);
        }
        return dialog;
    }

    @Override
    public void addPages() {
        addPage(files);
        addPage(preview);
        addPage(parts);
    }

    /** The drawings and what is said of them. */
    public Intake intake() {
        return intake;
    }

    /** The third page. */
    public PartsPage partsPage() {
        return parts;
    }

    /** The second page. */
    public PreviewPage previewPage() {
        return preview;
    }

    @Override
    public boolean canFinish() {
        return parts.isPageComplete() && !intake.takenParts().isEmpty() && !intake.reader().isBusy();
    }

    @Override
    public boolean performFinish() {
        if (!parts.check()) {
            getContainer().showPage(parts);
            return false;
        }
        TakenIn made = new TakenIn(session, parts.newParts(), parts.order(), intake.keptRules());
        try {
            getContainer().run(true, true, made::run);
        } catch (InvocationTargetException e) {
            Messages.show(getShell(), e.getCause());
            return false;
        } catch (InterruptedException e) {
            parts.setMessage(Texts.of("intake.cancelled"));
            return false;
        }
        takenIn = made;
        intake.stop();
        made.enter();
        return true;
    }

    /** What was taken in; null before. */
    public TakenIn takenIn() {
        return takenIn;
    }

    @Override
    public boolean performCancel() {
        intake.stop();
        return true;
    }
}
