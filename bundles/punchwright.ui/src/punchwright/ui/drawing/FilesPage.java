// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;

import punchwright.ui.table.Accessibles;
import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** First page: which files and folders, and whether each could be read. */
final class FilesPage extends WizardPage {

    private static final Icons[] SIGNS = { Icons.ERROR, Icons.WARNING, Icons.DRAWING, Icons.DRAWING };

    private final Intake intake;
    private DataTable<IntakeDrawing> table;
    private Label status;
    private ProgressBar bar;
    private Button stop;
    private Button remove;

    FilesPage(Intake intake) {
        super("files", Texts.of("intake.files.title"), null);
        this.intake = intake;
        setDescription(Texts.of("intake.files.message"));
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(10, 8).applyTo(body);
        table = new DataTable<>(body, Texts.of("intake.drawings"), columns());
        table.decorate((item, d) -> item.setImage(0, SIGNS[d.rank()].image()));
        table.onSelect(d -> remove.setEnabled(d != null));
        GridDataFactory.fillDefaults().grab(true, true).hint(900, 420).applyTo(table.control());
        table.control().addListener(SWT.KeyDown, e -> {
            if (e.keyCode == SWT.DEL) {
                intake.remove(table.selection());
            }
        });
        buttons(body);
        progress(body);
        FileDrop.on(table.control(), intake::add);
        intake.addListener(this::refresh);
        setControl(body);
        refresh();
    }

    private static List<Column<IntakeDrawing>> columns() {
        return List.of(Column.text("intake.col.drawing", 240, IntakeDrawing::name),
                Column.text("intake.col.state", 420, IntakeDrawing::stateText),
                Column.count("intake.col.parts", 60, d -> d.state() == IntakeDrawing.State.READ ? d.parts().size() : null),
                Column.count("intake.col.pieces", 60, d -> d.state() == IntakeDrawing.State.READ
                        ? d.parts().stream().mapToInt(p -> p.found().count()).sum() : null),
                Column.text("intake.col.folder", 260, d -> String.valueOf(d.file().getParent())));
    }

    private void buttons(Composite body) {
        Composite column = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(column);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.TOP).applyTo(column);
        button(column, "intake.addFiles", this::addFiles).setFocus();
        button(column, "intake.addFolder", this::addFolder);
        remove = button(column, "intake.remove", () -> intake.remove(table.selection()));
        remove.setEnabled(false);
    }

    private static Button button(Composite parent, String key, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(Texts.of(key));
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.run()));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(button);
        return button;
    }

    private void progress(Composite body) {
        Composite line = new Composite(body, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        status = new Label(line, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(status);
        bar = new ProgressBar(line, SWT.HORIZONTAL | SWT.SMOOTH);
        Accessibles.name(bar, Texts.of("job.intake"));
        GridDataFactory.fillDefaults().hint(240, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER).applyTo(bar);
        stop = new Button(line, SWT.PUSH);
        stop.setText(Texts.of("intake.stop"));
        stop.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> intake.stop()));
    }

    private void addFiles() {
        FileDialog dialog = new FileDialog(getShell(), SWT.OPEN | SWT.MULTI);
        dialog.setText(Texts.of("intake.addFiles.title"));
        dialog.setFilterExtensions(new String[] { "*.dxf;*.DXF", "*.*" });
        dialog.setFilterNames(new String[] { Texts.of("import.drawings"), Texts.of("import.all") });
        if (dialog.open() != null) {
            Path folder = Path.of(dialog.getFilterPath());
            intake.add(Stream.of(dialog.getFileNames()).map(folder::resolve).toList());
        }
    }

    private void addFolder() {
        DirectoryDialog dialog = new DirectoryDialog(getShell());
        dialog.setText(Texts.of("intake.addFolder.title"));
        dialog.setMessage(Texts.of("intake.addFolder.message"));
        String folder = dialog.open();
        if (folder != null) {
            intake.add(List.of(Path.of(folder)));
        }
    }

    private void refresh() {
        if (table == null || table.control().isDisposed()) {
            return;
        }
        List<IntakeDrawing> drawings = intake.drawings();
        table.setRows(drawings);
        IntakeReader reader = intake.reader();
        boolean busy = reader.isBusy();
        bar.setVisible(busy);
        stop.setVisible(busy);
        bar.setMaximum(Math.max(1, reader.total()));
        bar.setSelection(reader.finished());
        status.setText(busy ? Texts.of("intake.reading", reader.finished(), reader.total()) : summary(drawings));
        setPageComplete(drawings.stream().anyMatch(d -> d.state() != IntakeDrawing.State.WAITING));
    }

    private static String summary(List<IntakeDrawing> drawings) {
        if (drawings.isEmpty()) {
            return Texts.of("intake.none");
        }
        int parts = drawings.stream().mapToInt(d -> d.parts().size()).sum();
        long refused = drawings.stream().filter(d -> d.state() == IntakeDrawing.State.REFUSED).count();
        long waiting = drawings.stream().filter(d -> d.state() == IntakeDrawing.State.WAITING).count();
        return Texts.of("intake.summary", drawings.size(), parts, refused, waiting);
    }

    /** Asks whether to go on while drawings are still being read. */
    boolean mayLeave() {
        long read = intake.drawings().stream().filter(d -> d.state() != IntakeDrawing.State.WAITING).count();
        return MessageDialog.openQuestion(getShell(), Texts.of("intake.reading.title"), Texts.of("intake.reading.goOn", read,
                intake.drawings().size()));
    }
}
