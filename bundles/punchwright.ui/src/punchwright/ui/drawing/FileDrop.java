// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Control;

/** Files and folders dropped on a control. */
public final class FileDrop extends DropTargetAdapter {

    private final Control control;
    private final Consumer<List<Path>> what;

    private FileDrop(Control control, Consumer<List<Path>> what) {
        this.control = control;
        this.what = what;
    }

    /** Lets files and folders be dropped on a control. */
    public static void on(Control control, Consumer<List<Path>> what) {
        DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_DEFAULT | DND.DROP_MOVE);
        target.setTransfer(FileTransfer.getInstance());
        target.addDropListener(new FileDrop(control, what));
    }

    @Override
    public void dragEnter(DropTargetEvent e) {
        e.detail = DND.DROP_COPY;
    }

    /** What follows may open a dialog, so it waits until the drop itself is over. */
    @Override
    public void drop(DropTargetEvent e) {
        if (e.data instanceof String[] names) {
            List<Path> files = Stream.of(names).map(Path::of).toList();
            control.getDisplay().asyncExec(() -> {
                if (!control.isDisposed()) {
                    what.accept(files);
                }
            });
        }
    }
}
