// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.files.WorkspaceException;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.Part;
import punchwright.model.work.WorkFactory;
import punchwright.ui.editor.Editors;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** Takes a drawing in as a part: the drawing is copied into the workspace, the part opens with its picture. */
public final class Importing {

    private Importing() {
    }

    /** Asks for a drawing, then for what the drawing does not say. */
    public static void ask(IWorkbenchWindow window) {
        FileDialog dialog = new FileDialog(window.getShell(), SWT.OPEN);
        dialog.setText(Texts.of("import.title"));
        dialog.setFilterExtensions(new String[] { "*.dxf;*.DXF", "*.*" });
        dialog.setFilterNames(new String[] { Texts.of("import.drawings"), Texts.of("import.all") });
        String chosen = dialog.open();
        if (chosen != null) {
            ask(window, Path.of(chosen));
        }
    }

    /** Asks for what the drawing does not say: name, number, material, thickness. */
    public static void ask(IWorkbenchWindow window, Path drawing) {
        Session session = Session.current().orElseThrow();
        PartDialog dialog = new PartDialog(window.getShell(), session, drawing);
        if (dialog.open() == Window.OK) {
            take(window, session, drawing, dialog.part());
        }
    }

    private static void take(IWorkbenchWindow window, Session session, Path drawing, Part part) {
        Path folder = session.folder().resolve(WorkspacePaths.DRAWINGS);
        Background.start(Texts.of("job.import", drawing.getFileName()), monitor -> copied(drawing, folder), copy -> {
            DrawnShape shape = WorkFactory.eINSTANCE.createDrawnShape();
            shape.setDrawing(WorkspacePaths.DRAWINGS + "/" + copy.getFileName());
            part.setShape(shape);
            try {
                session.workspace().put(part);
                session.workspace().save(part);
                Session.changed();
                Editors.open(part);
            } catch (WorkspaceException e) {
                Messages.show(window.getShell(), e);
            }
        });
    }

    /** The drawing inside the workspace; a drawing of the same name and other content is left alone and the copy gets a number. */
    private static Path copied(Path drawing, Path folder) throws IOException {
        if (drawing.toAbsolutePath().normalize().startsWith(folder)) {
            return drawing;
        }
        Files.createDirectories(folder);
        String name = drawing.getFileName().toString();
        int point = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
        Path target = folder.resolve(name);
        for (int number = 2; Files.exists(target) && Files.mismatch(drawing, target) >= 0; number++) {
            target = folder.resolve(name.substring(0, point) + "-" + number + name.substring(point).toLowerCase(Locale.ROOT));
        }
        if (!Files.exists(target)) {
            Files.copy(drawing, target);
        }
        return target;
    }
}
