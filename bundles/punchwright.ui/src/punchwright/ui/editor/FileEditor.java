// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.editor;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.EditorPart;

import punchwright.model.files.WorkspaceException;
import punchwright.ui.job.Messages;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/**
 * What all editors share: undo, redo, save, revert and dirty state from the file's command stack; an error instead of a dead
 * editor.
 */
public abstract class FileEditor extends EditorPart {

    private OpenFile file;
    private final Action undo = new StackAction("undo", () -> file().undo());
    private final Action redo = new StackAction("redo", () -> file().redo());
    private final Action revert = new StackAction("revert", () -> file().revert());
    private final Runnable follower = this::stateChanged;

    @Override
    public void init(IEditorSite site, IEditorInput input) throws PartInitException {
        if (!(input instanceof FileInput fileInput) || Session.current().isEmpty()) {
            throw new PartInitException(Texts.of("editor.noFile"));
        }
        setSite(site);
        setInput(input);
        setPartName(input.getName());
        setTitleImage(Signs.of(fileInput.root()).image());
        file = Session.current().get().fileOf(fileInput.root());
        file.addListener(follower);
    }

    /** The file that is edited. */
    protected OpenFile file() {
        return file;
    }

    @Override
    public final void createPartControl(Composite parent) {
        createContent(parent);
        IActionBars bars = getEditorSite().getActionBars();
        bars.setGlobalActionHandler(ActionFactory.UNDO.getId(), undo);
        bars.setGlobalActionHandler(ActionFactory.REDO.getId(), redo);
        bars.setGlobalActionHandler(ActionFactory.REVERT.getId(), revert);
        stateChanged();
    }

    /** Makes the editor's widgets. */
    protected abstract void createContent(Composite parent);

    /** Goes to an object of the file. */
    public void reveal(EObject object) {
        setFocus();
    }

    /** Gives the focus to the field of a feature of an object that was revealed, where there is one. */
    public void focus(String featureName) {
        setFocus();
    }

    private void stateChanged() {
        undo.setEnabled(file.canUndo());
        redo.setEnabled(file.canRedo());
        revert.setEnabled(file.isDirty());
        undo.setText(Texts.of("action.undo") + (file.undoLabel().isEmpty() ? "" : " \u2013 " + file.undoLabel()));
        firePropertyChange(PROP_DIRTY);
        String name = getEditorInput().getName();
        if (!name.equals(getPartName())) {
            setPartName(name);
        }
    }

    @Override
    public boolean isDirty() {
        return file != null && file.isDirty();
    }

    @Override
    public void doSave(IProgressMonitor monitor) {
        try {
            file.save();
        } catch (WorkspaceException e) {
            monitor.setCanceled(true);
            Messages.show(getSite().getShell(), e);
        }
    }

    @Override
    public void doSaveAs() {
        throw new UnsupportedOperationException("A file of the workspace keeps its name");
    }

    @Override
    public boolean isSaveAsAllowed() {
        return false;
    }

    @Override
    public void dispose() {
        if (file != null) {
            file.removeListener(follower);
            if (isDirty()) {
                file.revert();
            }
        }
        super.dispose();
    }

    /** An action on the stack. */
    private static final class StackAction extends Action {
        private final Runnable what;

        StackAction(String key, Runnable what) {
            super(Texts.of("action." + key));
            this.what = what;
        }

        @Override
        public void run() {
            what.run();
        }
    }
}
