// SPDX-License-Identifier: EPL-2.0
package punchwright.ui;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

import punchwright.ui.job.Messages;
import punchwright.ui.job.OpenWorkspace;
import punchwright.ui.session.OutsideChanges;
import punchwright.ui.session.Session;
import punchwright.ui.start.StartEditor;
import punchwright.ui.start.StartInput;

/** Sets the window up, shows the first page and opens the workspace, which takes the first page's place when it can be read. */
final class PunchwrightWindowAdvisor extends WorkbenchWindowAdvisor {

    private static final String NAME = "Punchwright";

    private final Optional<Path> workspace;

    PunchwrightWindowAdvisor(IWorkbenchWindowConfigurer configurer, Optional<Path> workspace) {
        super(configurer);
        this.workspace = workspace;
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new PunchwrightActions(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer window = getWindowConfigurer();
        window.setInitialSize(new Point(1400, 880));
        window.setTitle(NAME);
        window.setShowCoolBar(true);
        window.setShowStatusLine(true);
        window.setShowProgressIndicator(true);
        window.setShowPerspectiveBar(false);
    }

    @Override
    public void postWindowOpen() {
        IWorkbenchWindow window = getWindowConfigurer().getWindow();
        Session.addListener(() -> title(window));
        OutsideChanges.watch(window);
        showStart(window);
        workspace.ifPresent(folder -> OpenWorkspace.open(window, folder));
    }

    private static void showStart(IWorkbenchWindow window) {
        try {
            window.getActivePage().openEditor(new StartInput(), StartEditor.ID);
        } catch (PartInitException e) {
            Messages.show(window.getShell(), e);
        }
    }

    private static void title(IWorkbenchWindow window) {
        if (window.getShell() != null && !window.getShell().isDisposed()) {
            window.getShell().setText(Session.current().map(s -> s.workspace().library().getName() + " \u2013 " + s.folder()
                    + " \u2013 " + NAME)
                    .orElse(NAME));
        }
    }

    @Override
    public boolean preWindowShellClose() {
        boolean saved = getWindowConfigurer().getWindow().getActivePage() == null
                || getWindowConfigurer().getWindow().getActivePage().closeAllEditors(true);
        if (saved) {
            Session.end();
        }
        return saved;
    }
}
