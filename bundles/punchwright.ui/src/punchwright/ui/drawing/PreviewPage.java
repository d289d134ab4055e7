// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.List;

import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

import punchwright.ui.table.Column;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** Second page: what each drawing shows. */
public final class PreviewPage extends WizardPage {

    private static final Icons[] SIGNS = { Icons.ERROR, Icons.WARNING, Icons.DRAWING, Icons.DRAWING };

    private final Intake intake;
    private DataTable<IntakeDrawing> list;
    private ReadingEditor editor;

    PreviewPage(Intake intake) {
        super("preview", Texts.of("intake.preview.title"), null);
        this.intake = intake;
        setDescription(Texts.of("intake.preview.message"));
    }

    @Override
    public void createControl(Composite parent) {
        SashForm sash = new SashForm(parent, SWT.HORIZONTAL);
        list = new DataTable<>(sash, Texts.of("intake.drawings.short"), List.of(Column.text("intake.col.drawing", 150,
                IntakeDrawing::name),
                Column.count("intake.col.parts", 50, d -> d.state() == IntakeDrawing.State.READ ? d.parts().size() : null)));
        list.decorate((item, d) -> item.setImage(0, SIGNS[d.rank()].image()));
        editor = new ReadingEditor(sash, intake, true);
        sash.setWeights(18, 82);
        list.onSelect(editor::show);
        intake.addListener(this::refresh);
        setControl(sash);
        refresh();
    }

    private void refresh() {
        if (!list.control().isDisposed()) {
            list.setRows(intake.drawings());
            setPageComplete(!intake.takenParts().isEmpty());
            setMessage(intake.takenParts().isEmpty() ? Texts.of("intake.preview.noPart") : null, WARNING);
        }
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            if (list.first() == null && !intake.drawings().isEmpty()) {
                list.select(intake.drawings().get(0));
            }
            list.control().setFocus();
        }
    }

    /** Shows a drawing. */
    public void select(IntakeDrawing drawing) {
        list.select(drawing);
    }

    /** Picture, findings, layers and parts of the drawing shown. */
    public ReadingEditor editor() {
        return editor;
    }
}
