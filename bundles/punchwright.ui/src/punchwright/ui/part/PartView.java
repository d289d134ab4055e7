// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.part;

import java.nio.file.Path;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import punchwright.engine.drawing.LayerRules;
import punchwright.model.files.WorkspaceException;
import punchwright.model.work.DrawnShape;
import punchwright.model.work.Part;
import punchwright.ui.drawing.FindingList;
import punchwright.ui.drawing.Legend;
import punchwright.ui.drawing.ReadAgainDialog;
import punchwright.ui.job.Background;
import punchwright.ui.job.Messages;
import punchwright.ui.session.Session;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** The picture of a part with texts, centre marks and findings of its drawing, and the way to read the drawing again. */
final class PartView extends Composite {

    private final Part part;
    private final SheetCanvas canvas;
    private final Legend legend;
    private final FindingList findings;
    private final SashForm sash;
    private final Label status;
    private final Button again;
    private int drawn;

    PartView(Composite parent, Part part) {
        super(parent, SWT.NONE);
        this.part = part;
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 0).applyTo(this);
        sash = new SashForm(this, SWT.VERTICAL);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(sash);
        Composite upper = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(upper);
        canvas = new SheetCanvas(upper, Texts.of("part.picture"));
        GridDataFactory.fillDefaults().grab(true, true).hint(200, 200).applyTo(canvas);
        legend = new Legend(upper);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(legend);
        findings = new FindingList(sash);
        sash.setWeights(66, 34);
        status = new Label(this, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 2).hint(200, 40).applyTo(status);
        again = new Button(this, SWT.PUSH);
        again.setText(Texts.of("readAgain.button"));
        again.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> readAgain()));
        findings.onSelect(canvas::selectMark);
        canvas.onMark(findings::mark);
    }

    SheetCanvas canvas() {
        return canvas;
    }

    FindingList findings() {
        return findings;
    }

    /** Draws the part as it is now; the reading is done beside the window, on a copy. */
    void draw() {
        Part copy = EcoreUtil.copy(part);
        int turn = ++drawn;
        Session session = Session.current().orElseThrow();
        LayerRules rules = session.layerRules();
        again.setEnabled(part.getShape() instanceof DrawnShape);
        Background.start(Texts.of("job.picture", copy.getName()), monitor -> PartPicture.read(copy, session.workspace().paths(),
                rules),
                picture -> show(picture, turn));
    }

    private void show(PartPicture picture, int turn) {
        if (isDisposed() || turn != drawn) {
            return;
        }
        legend.show(picture.scene());
        canvas.setScene(picture.scene());
        findings.show(picture.findings());
        sash.setMaximizedControl(picture.findings().isEmpty() ? sash.getChildren()[0] : null);
        status.setText(picture.error().isEmpty() ? Texts.of("part.facts", picture.openings(),
                Numbers.fixed(picture.areaMm2() / 100, 1),
                Numbers.fixed(picture.cutLengthMm(), 0)) : picture.error());
    }

    private void readAgain() {
        Session session = Session.current().orElseThrow();
        try {
            Path file = session.workspace().paths().resolve(String.valueOf(((DrawnShape) part.getShape()).getDrawing()));
            if (new ReadAgainDialog(getShell(), session, part, file).open() == Window.OK) {
                draw();
            }
        } catch (WorkspaceException e) {
            Messages.show(getShell(), e);
        }
    }
}
