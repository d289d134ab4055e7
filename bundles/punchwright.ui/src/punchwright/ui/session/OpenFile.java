// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.session;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.emf.edit.provider.ComposedAdapterFactory;
import org.eclipse.emf.edit.provider.ReflectiveItemProviderAdapterFactory;

import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspaceException;

/**
 * One file of the workspace as it is edited: one command stack, shared by every editor that shows the file. To be used on the UI
 * thread only.
 */
public final class OpenFile {

    private final Workspace workspace;
    private final EObject root;
    private final BasicCommandStack stack = new BasicCommandStack();
    private final EditingDomain domain;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    OpenFile(Workspace workspace, EObject root) {
        this.workspace = workspace;
        this.root = root;
        ComposedAdapterFactory factory = new ComposedAdapterFactory(ComposedAdapterFactory.Descriptor.Registry.INSTANCE);
        factory.addAdapterFactory(new ReflectiveItemProviderAdapterFactory());
        domain = new AdapterFactoryEditingDomain(factory, stack, workspace.resourceSet());
        stack.addCommandStackListener(e -> tell());
    }

    /** The object at the root of the file. */
    public EObject root() {
        return root;
    }

    /** The file. */
    public Path path() {
        return workspace.fileOf(root);
    }

    /** For commands that want one. */
    public EditingDomain domain() {
        return domain;
    }

    /** Runs a command; nothing happens when it changes nothing. */
    public boolean run(Command command) {
        if (!command.canExecute()) {
            return false;
        }
        stack.execute(command);
        return true;
    }

    /** Whether something can be undone. */
    public boolean canUndo() {
        return stack.canUndo();
    }

    /** Whether something can be done again. */
    public boolean canRedo() {
        return stack.canRedo();
    }

    /** Takes the last change back. */
    public void undo() {
        if (stack.canUndo()) {
            stack.undo();
        }
    }

    /** Does the change again that was taken back. */
    public void redo() {
        if (stack.canRedo()) {
            stack.redo();
        }
    }

    /** What would be undone, for the menu; empty when nothing. */
    public String undoLabel() {
        return stack.canUndo() && stack.getUndoCommand().getLabel() != null ? stack.getUndoCommand().getLabel() : "";
    }

    /** Whether it differs from what was saved. */
    public boolean isDirty() {
        return stack.isSaveNeeded();
    }

    /** Saves atomically. */
    public void save() throws WorkspaceException {
        workspace.save(root);
        stack.saveIsDone();
        tell();
    }

    /** Goes back to what was saved, by way of the stack: a revert can itself be undone by Redo. */
    public void revert() {
        while (stack.isSaveNeeded() && stack.canUndo()) {
            stack.undo();
        }
        while (stack.isSaveNeeded() && stack.canRedo()) {
            stack.redo();
        }
    }

    /** Told after every change, undo, redo and save. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** No longer told. */
    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    private void tell() {
        listeners.forEach(Runnable::run);
    }
}
