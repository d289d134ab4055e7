// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

import punchwright.engine.geometry.Shape;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.Part;
import punchwright.model.work.PickPoint;
import punchwright.model.work.WorkFactory;
import punchwright.model.work.WorkPackage;
import punchwright.planner.convert.PartPick;
import punchwright.planner.intake.DrawingReading;
import punchwright.planner.intake.FoundPart;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/**
 * Reads the drawing of a part with another unit or other layers, and picks the part anew where it shows several. One change,
 * to be undone in the part.
 */
public final class ReadAgainDialog extends TitleAreaDialog {

    private final Session session;
    private final Part part;
    private final Intake intake;
    private final IntakeDrawing drawing;
    private ReadingEditor editor;
    private boolean picked;

    /** For a part that has a drawing at a file. */
    public ReadAgainDialog(Shell parent, Session session, Part part, Path file) {
        super(parent);
        this.session = session;
        this.part = part;
        this.intake = new Intake(session.workspace().library());
        this.drawing = intake.add(file, (DrawnShape) part.getShape());
        setHelpAvailable(false);
        setShellStyle(getShellStyle() | org.eclipse.swt.SWT.RESIZE | org.eclipse.swt.SWT.MAX);
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Texts.of("readAgain.title"));
    }

    @Override
    protected Point getInitialSize() {
        return new Point(1180, 780);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        setTitle(drawing.name());
        setMessage(Texts.of("readAgain.message"));
        editor = new ReadingEditor(area, intake, false);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(editor);
        editor.show(drawing);
        intake.addListener(this::follow);
        editor.onPart(this::follow);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        super.createButtonsForButtonBar(parent);
        follow();
    }

    private void follow() {
        if (getButton(IDialogConstants.OK_ID) == null || editor.isDisposed()) {
            return;
        }
        if (!picked && drawing.state() == IntakeDrawing.State.READ && drawing.kept() != null) {
            picked = true;
            present().ifPresent(editor::selectPart);
        }
        setErrorMessage(drawing.state() == IntakeDrawing.State.REFUSED ? drawing.stateText()
                : drawing.state() == IntakeDrawing.State.READ && chosen() == null ? Texts.of("readAgain.pick") : null);
        getButton(IDialogConstants.OK_ID).setEnabled(chosen() != null);
    }

    private static int copies(List<IntakePart> parts) {
        return parts.stream().mapToInt(p -> p.found().count()).sum();
    }

    /** The part that it will be; null as long as it is not clear. */
    private FoundPart chosen() {
        List<IntakePart> parts = drawing.state() == IntakeDrawing.State.READ ? drawing.parts() : List.of();
        if (parts.size() == 1) {
            return parts.get(0).found();
        }
        return parts.stream().map(IntakePart::found).filter(f -> f.number() == editor.selectedPart()).findFirst().orElse(null);
    }

    /** The number of the part that is picked at present, when the drawing still shows it there. */
    private Optional<Integer> present() {
        PickPoint pick = ((DrawnShape) part.getShape()).getPick();
        DrawingReading reading = drawing.kept();
        if (pick == null || reading.drawing() == null) {
            return Optional.empty();
        }
        List<Shape> shapes = reading.drawing().shapes();
        Optional<Shape> now = PartPick.at(shapes, new punchwright.engine.geometry.Point(pick.getXMm(), pick.getYMm()));
        return reading.parts().stream().filter(f -> now.equals(PartPick.at(shapes, f.place()))).map(FoundPart::number)
                .findFirst();
    }

    @Override
    protected void okPressed() {
        DrawnShape shape = EcoreUtil.copy(drawing.choice());
        shape.setDrawing(((DrawnShape) part.getShape()).getDrawing());
        shape.setPick(null);
        if (copies(drawing.parts()) > 1) {
            PickPoint pick = WorkFactory.eINSTANCE.createPickPoint();
            pick.setXMm(chosen().place().x());
            pick.setYMm(chosen().place().y());
            shape.setPick(pick);
        }
        intake.stop();
        KeptRules.enter(session, intake.keptRules());
        OpenFile file = session.fileOf(part);
        if (!EcoreUtil.equals(shape, part.getShape())) {
            file.run(SetCommand.create(file.domain(), part, WorkPackage.Literals.PART__SHAPE, shape));
        }
        super.okPressed();
    }

    /** Presses OK, for tests. */
    public void accept() {
        okPressed();
    }

    /** The drawing and how it is read. */
    public IntakeDrawing drawing() {
        return drawing;
    }

    /** Picture, findings, layers and parts. */
    public ReadingEditor editor() {
        return editor;
    }

    @Override
    public boolean close() {
        intake.stop();
        return super.close();
    }
}
