// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;

import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.finding.Finding;
import punchwright.planner.intake.DrawingReading;
import punchwright.ui.job.Background;
import punchwright.ui.sheet.Scene;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** One drawing as it is read: large picture with its legend, unit, and beside it findings, layers and parts. */
public final class ReadingEditor extends Composite {

    private final Intake intake;
    private final UnitBar unit;
    private final SheetCanvas canvas;
    private final Legend legend;
    private final Label facts;
    private final TabFolder tabs;
    private final FindingList findings;
    private final LayerList layers;
    private final FoundParts parts;
    private IntakeDrawing drawing;
    private DrawingReading shown;
    private boolean sameDrawing;
    private Runnable onPart = () -> { };

    /** @param several whether the drawing is one of many, so that its unit and layers can be taken for all */
    public ReadingEditor(Composite parent, Intake intake, boolean several) {
        super(parent, SWT.NONE);
        this.intake = intake;
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(this);
        unit = new UnitBar(this, intake, several);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(unit);
        SashForm sash = new SashForm(this, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        Composite left = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(left);
        canvas = new SheetCanvas(left, Texts.of("intake.picture"));
        GridDataFactory.fillDefaults().grab(true, true).hint(300, 300).applyTo(canvas);
        legend = new Legend(left);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(legend);
        facts = new Label(left, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 2).applyTo(facts);
        tabs = new TabFolder(sash, SWT.TOP);
        findings = new FindingList(tabs);
        layers = new LayerList(tabs, intake);
        parts = new FoundParts(tabs);
        tab("place.findings", findings);
        tab("intake.layers", layers);
        tab("place.parts", parts);
        sash.setWeights(60, 40);
        connect();
        intake.addListener(this::refresh);
    }

    private void tab(String key, Control content) {
        TabItem item = new TabItem(tabs, SWT.NONE);
        item.setText(Texts.of(key));
        item.setControl(content);
    }

    private void connect() {
        findings.onSelect(canvas::selectMark);
        canvas.onMark(number -> {
            findings.mark(number);
            if (number > 0) {
                tabs.setSelection(0);
            }
        });
        parts.onSelect(p -> {
            canvas.selectPiece(p == null ? 0 : p.found().number());
            onPart.run();
        });
        canvas.onPiece(number -> {
            parts.mark(number);
            if (number > 0) {
                tabs.setSelection(2);
            }
            onPart.run();
        });
        parts.onTake(intake::changed);
    }

    /** Shows a drawing; reads it again when its reading was dropped from memory. */
    public void show(IntakeDrawing other) {
        sameDrawing = false;
        drawing = other;
        shown = null;
        if (drawing != null && drawing.state() != IntakeDrawing.State.WAITING && drawing.kept() == null) {
            intake.reader().first(drawing);
        }
        display(drawing == null ? null : drawing.kept());
    }

    private void refresh() {
        if (isDisposed() || drawing == null) {
            return;
        }
        DrawingReading now = drawing.kept();
        if (now != null && now != shown) {
            sameDrawing = shown != null;
            display(now);
        } else if (drawing.state() == IntakeDrawing.State.WAITING) {
            facts.setText(Texts.of("intake.waiting"));
        }
    }

    private void display(DrawingReading reading) {
        shown = reading;
        List<Finding> all = reading == null ? List.of() : reading.findings();
        unit.show(drawing, reading);
        findings.show(all);
        layers.show(drawing, reading);
        parts.show(drawing == null || reading == null ? List.of() : drawing.parts());
        tabs.getItem(0).setText(Texts.of("intake.tab", Texts.of("place.findings"), all.size()));
        tabs.getItem(1).setText(Texts.of("intake.tab", Texts.of("intake.layers"), layers.table().totalCount()));
        tabs.getItem(2).setText(Texts.of("intake.tab", Texts.of("place.parts"), parts.table().totalCount()));
        if (!sameDrawing) {
            tabs.setSelection(all.isEmpty() && parts.table().totalCount() > 1 ? 2 : all.isEmpty() ? 1 : 0);
        }
        if (reading == null || reading.drawing() == null) {
            picture(Scene.EMPTY);
            facts.setText(drawing == null ? "" : drawing.stateText().replace("&", "&&"));
            return;
        }
        facts.setText(facts(reading.drawing()));
        DrawingReading wanted = reading;
        boolean same = sameDrawing;
        Background.start(Texts.of("job.picture", drawing.name()), m -> DrawingScenes.of(wanted.drawing(), wanted.findings()),
                scene -> {
            if (!isDisposed() && shown == wanted) {
                pictureOf(scene, same);
            }
        });
    }

    /** A drawing that is read in another way keeps its place under the window, unless its unit and so its size has changed. */
    private void pictureOf(Scene scene, boolean same) {
        double[] before = canvas.scene().box();
        double[] now = scene.box();
        boolean alike = same && Math.abs(before[0] - now[0]) + Math.abs(before[3] - now[3]) < 0.2 * (now[3] - now[1]);
        if (alike) {
            canvas.updateScene(scene);
            legend.show(scene);
        } else {
            picture(scene);
        }
    }

    private void picture(Scene scene) {
        legend.show(scene);
        canvas.setScene(scene);
    }

    private static String facts(DrawingResult d) {
        return Texts.of("intake.facts", d.loops().size(), d.openChains().size(), Numbers.fixed(d.cutLengthMm(), 0),
                Numbers.fixed(d.areaMm2() / 100, 1));
    }

    /** Told when another part is selected. */
    public void onPart(Runnable what) {
        onPart = what;
    }

    /** The number of the selected part, 0 for none. */
    public int selectedPart() {
        return parts.selected();
    }

    /** Selects a part by its number. */
    public void selectPart(int number) {
        parts.mark(number);
        canvas.selectPiece(number);
    }

    /** The picture. */
    public SheetCanvas canvas() {
        return canvas;
    }

    /** The findings. */
    public FindingList findings() {
        return findings;
    }

    /** The layers, for tests. */
    public LayerList layers() {
        return layers;
    }

    /** The parts, for tests. */
    public FoundParts parts() {
        return parts;
    }
}
