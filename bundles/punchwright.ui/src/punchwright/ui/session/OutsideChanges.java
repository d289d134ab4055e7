// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.files.WorkspaceException;
import punchwright.ui.job.OpenWorkspace;
import punchwright.ui.text.Texts;

/** Looks, when the window comes to the front, whether another program changed a file; offers to read again, never overwrites. */
public final class OutsideChanges {

    private final IWorkbenchWindow window;
    private final Set<Path> told = new TreeSet<>();
    private boolean asking;

    private OutsideChanges(IWorkbenchWindow window) {
        this.window = window;
    }

    /** Watches from now on. */
    public static void watch(IWorkbenchWindow window) {
        OutsideChanges watch = new OutsideChanges(window);
        window.getShell().addListener(SWT.Activate, e -> window.getShell().getDisplay().asyncExec(watch::look));
    }

    private void look() {
        Session session = Session.current().orElse(null);
        if (asking || session == null || window.getShell() == null || window.getShell().isDisposed()) {
            return;
        }
        try {
            List<Path> changed = session.workspace().changedOutside().stream().filter(f -> !told.contains(f)).toList();
            if (!changed.isEmpty()) {
                ask(session, changed);
            }
        } catch (WorkspaceException e) {
            // A file that cannot be read now is told when it is saved.
            return;
        }
    }

    private void ask(Session session, List<Path> changed) {
        asking = true;
        try {
            String names = changed.stream().map(f -> f.getFileName().toString()).collect(Collectors.joining(", "));
            int answer = MessageDialog.open(MessageDialog.QUESTION, window.getShell(), Texts.of("outside.title"),
                    Texts.of("outside.message", names), 0, Texts.of("outside.again"), Texts.of("outside.keep"));
            if (answer == 0) {
                told.clear();
                window.getActivePage().closeAllEditors(false);
                OpenWorkspace.open(window, session.folder());
            } else {
                told.addAll(changed);
            }
        } finally {
            asking = false;
        }
    }
}
