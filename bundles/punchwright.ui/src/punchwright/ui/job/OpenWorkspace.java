// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspaceException;
import punchwright.model.files.WorkspacePaths;
import punchwright.planner.convert.ShopLayerRules;
import punchwright.ui.editor.Editors;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Recent;
import punchwright.ui.session.Session;
import punchwright.ui.start.StartInput;
import punchwright.ui.text.Texts;

/** Opens a workspace folder in the background and makes it the one in the window. */
public final class OpenWorkspace {

    private OpenWorkspace() {
    }

    /** Asks for a folder and opens it. */
    public static void ask(IWorkbenchWindow window) {
        DirectoryDialog dialog = new DirectoryDialog(window.getShell());
        dialog.setText(Texts.of("open.title"));
        dialog.setMessage(Texts.of("open.message"));
        String folder = dialog.open();
        if (folder != null) {
            open(window, Path.of(folder));
        }
    }

    /** Asks for a folder, makes an empty workspace in it and opens it. */
    public static void askNew(IWorkbenchWindow window) {
        DirectoryDialog dialog = new DirectoryDialog(window.getShell());
        dialog.setText(Texts.of("new.title"));
        dialog.setMessage(Texts.of("new.message"));
        String folder = dialog.open();
        if (folder != null && leave(window)) {
            Path path = Path.of(folder);
            Background.start(Texts.of("job.open", path.getFileName()),
                    monitor -> made(path), OpenWorkspace::begin);
        }
    }

    /** An empty workspace with the usual layer rules; one that is there already is opened as it is. */
    private static Workspace made(Path folder) throws WorkspaceException {
        boolean there = Files.exists(folder.resolve(WorkspacePaths.LIBRARY));
        Workspace workspace = Workspace.create(folder, String.valueOf(folder.getFileName()), "EUR");
        if (!there) {
            workspace.library().getLayerRules().addAll(ShopLayerRules.usual(Locale.getDefault()));
            workspace.save(workspace.library());
        }
        return workspace;
    }

    /** Opens a folder, once the present workspace is saved or given up. */
    public static void open(IWorkbenchWindow window, Path folder) {
        if (leave(window)) {
            Background.start(Texts.of("job.open", folder.getFileName()), monitor -> load(folder), OpenWorkspace::begin);
        }
    }

    private static Workspace load(Path folder) throws WorkspaceException {
        return Workspace.open(folder);
    }

    private static void begin(Workspace workspace) {
        Session.begin(workspace);
        Recent.add(workspace.paths().root());
        closeStart();
        Editors.open(workspace.library());
    }

    private static void closeStart() {
        for (IWorkbenchWindow window : PlatformUI.getWorkbench().getWorkbenchWindows()) {
            IEditorPart start = window.getActivePage() == null ? null : window.getActivePage().findEditor(new StartInput());
            if (start != null) {
                window.getActivePage().closeEditor(start, false);
            }
        }
    }

    /** Closes the editors of the present workspace; false when the person stays. */
    public static boolean leave(IWorkbenchWindow window) {
        if (Session.current().isEmpty()) {
            return true;
        }
        IWorkbenchPage page = window.getActivePage();
        if (page != null && !page.closeAllEditors(true)) {
            return false;
        }
        Session.end();
        return true;
    }

    /** Saves what has changes after asking; false when the person cancels. Whoever reads from disk calls this first. */
    public static boolean saved(IWorkbenchWindow window, Session session) {
        if (session.dirtyFiles().isEmpty()) {
            return true;
        }
        String names = String.join(", ", session.dirtyFiles().stream().map(OpenFile::path)
                .map(p -> p.getFileName().toString()).toList());
        int answer = MessageDialog.open(MessageDialog.QUESTION, window.getShell(), Texts.of("save.first.title"),
                Texts.of("save.first", names), 0, Texts.of("save.first.yes"), IDialogConstants.CANCEL_LABEL);
        if (answer != 0) {
            return false;
        }
        try {
            session.saveAll();
            return true;
        } catch (WorkspaceException e) {
            Messages.show(window.getShell(), e);
            return false;
        }
    }
}
