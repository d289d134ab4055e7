// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.session;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.engine.drawing.LayerRules;
import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspaceException;
import punchwright.planner.convert.ShopLayerRules;

/** The workspace that is open in the window, and its files as they are edited. To be used on the UI thread only. */
public final class Session {

    private static final List<Runnable> LISTENERS = new CopyOnWriteArrayList<>();
    private static Session current;

    private final Workspace workspace;
    private final Map<EObject, OpenFile> files = new LinkedHashMap<>();
    private final BasicCommandStack made = new BasicCommandStack();

    private Session(Workspace workspace) {
        this.workspace = workspace;
    }

    /** The open workspace, if any. */
    public static Optional<Session> current() {
        return Optional.ofNullable(current);
    }

    /** Makes a workspace that was opened in the background the open one; the one before is closed. */
    public static Session begin(Workspace workspace) {
        if (current != null) {
            current.workspace.close();
        }
        current = new Session(workspace);
        changed();
        return current;
    }

    /** Closes the open workspace; what was not saved is lost. */
    public static void end() {
        if (current != null) {
            current.workspace.close();
            current = null;
            changed();
        }
    }

    /** Told when another workspace is opened, or when files appear, go or are saved. */
    public static void addListener(Runnable listener) {
        LISTENERS.add(listener);
    }

    /** No longer told. */
    public static void removeListener(Runnable listener) {
        LISTENERS.remove(listener);
    }

    /** Tells everyone that the list of files or their state has changed. */
    public static void changed() {
        LISTENERS.forEach(Runnable::run);
    }

    /** The model's view of the folder. */
    public Workspace workspace() {
        return workspace;
    }

    /** The folder. */
    public Path folder() {
        return workspace.paths().root();
    }

    /** Changes that make or take away whole files, for undo and redo in the explorer. */
    public BasicCommandStack made() {
        return made;
    }

    /** What layers mean in drawings of this shop: its rules as they are now, also when they are not saved yet. */
    public LayerRules layerRules() {
        return ShopLayerRules.of(workspace.library());
    }

    /** The file that an object lives in. */
    public OpenFile fileOf(EObject object) {
        EObject root = EcoreUtil.getRootContainer(object);
        return files.computeIfAbsent(root, r -> {
            OpenFile file = new OpenFile(workspace, r);
            file.addListener(Session::changed);
            return file;
        });
    }

    /** Whether a file of this object has changes that are not saved. */
    public boolean isDirty(EObject root) {
        OpenFile file = files.get(root);
        return file != null && file.isDirty();
    }

    /** Files with changes that are not saved. */
    public List<OpenFile> dirtyFiles() {
        List<OpenFile> dirty = new ArrayList<>();
        for (OpenFile file : files.values()) {
            if (file.isDirty()) {
                dirty.add(file);
            }
        }
        return dirty;
    }

    /** Forgets the stack of an object that was replaced or removed. */
    public void forget(EObject root) {
        files.remove(root);
    }

    /** Saves everything that has changes. */
    public void saveAll() throws WorkspaceException {
        for (OpenFile file : dirtyFiles()) {
            file.save();
        }
    }
}
