// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.plan;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import punchwright.model.plan.Finding;
import punchwright.model.plan.Hit;
import punchwright.model.plan.Layout;
import punchwright.model.plan.Operation;
import punchwright.model.plan.Plan;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.ToolUse;
import punchwright.ui.editor.FileEditor;
import punchwright.ui.findings.FindingRow;
import punchwright.ui.job.Background;
import punchwright.ui.part.PartShapes;
import punchwright.ui.session.Session;
import punchwright.ui.sheet.Scene;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** A plan: the sheet as a drawing on the left, its tables on the right; what is selected here is selected there. */
public final class PlanEditor extends FileEditor {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.plan";

    private SheetBar bar;
    private SheetCanvas canvas;
    private Label status;
    private PlanTabs tabs;
    private Layout layout;

    /** The plan shown. */
    public Plan plan() {
        return (Plan) file().root();
    }

    @Override
    protected void createContent(Composite parent) {
        EcoreUtil.resolveAll(plan());
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(body);
        Label title = new Label(body, SWT.NONE);
        title.setText(PlanTitle.of(plan()));
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 6).applyTo(title);
        bar = new SheetBar(body, plan());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        SashForm sash = new SashForm(body, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        Composite left = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(left);
        canvas = new SheetCanvas(left, Texts.of("plan.sheet"));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        status = new Label(left, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 0).hint(SWT.DEFAULT, 22).applyTo(status);
        tabs = new PlanTabs(sash, plan());
        sash.setWeights(60, 40);
        connect();
        bar.selectFirst();
    }

    private void connect() {
        bar.onLayout(this::show);
        bar.onHolding(index -> canvas.showHolding(index));
        bar.onView(canvas);
        canvas.onSelect(this::hitSelected);
        canvas.onMove(this::pointerMoved);
        tabs.onTool(use -> canvas.showTool(use == null ? 0 : use.getBalloon()));
        tabs.onOperation(this::goTo);
        tabs.onFinding(this::goTo);
    }

    private void show(Layout chosen) {
        layout = chosen;
        tabs.show(chosen);
        Plan plan = plan();
        PartShapes shapes = new PartShapes(Session.current().orElseThrow().workspace().paths(), Session.current().orElseThrow()
                .layerRules());
        status.setText(Texts.of("plan.drawing"));
        Background.start(Texts.of("job.picture", plan.getName()), monitor -> new SceneBuilder(plan, chosen, shapes::of).build(),
                this::picture);
    }

    private void picture(Scene scene) {
        if (!canvas.isDisposed()) {
            canvas.setScene(withMarks(scene));
            status.setText(Texts.of("plan.counts", scene.parts().size(), scene.hitCount(), layout.getHoldings().size()));
        }
    }

    private Scene withMarks(Scene scene) {
        List<Scene.Mark> marks = new ArrayList<>();
        for (Finding finding : plan().getFindings()) {
            if (finding.isLocated() && finding.getSubjectObject() == layout) {
                marks.add(SceneBuilder.mark(finding));
            }
        }
        return new Scene(scene.lengthMm(), scene.widthMm(), scene.parts(), scene.groups(), scene.holdings(),
                scene.joints(), marks, scene.lines());
    }

    private void hitSelected(int number) {
        if (number < 0) {
            status.setText("");
            tabs.mark(null, null);
            return;
        }
        Hit hit = layout.getHits().get(number);
        tabs.mark(hit.getToolUse(), hit.getOperation());
        String what = hit.getOperation() == null ? Texts.of(hit.getRole()) : hit.getOperation().getDescription();
        String tool = hit.getToolUse() == null || hit.getToolUse().getTool() == null ? "" : hit.getToolUse().getTool().getName();
        status.setText(Texts.of("plan.hit", number + 1, layout.getHits().size(), hit.getToolUse() == null ? 0
                : hit.getToolUse().getBalloon(), tool, Numbers.fixed(hit.getXMm(), 2), Numbers.fixed(hit.getYMm(), 2),
                Numbers.plain(hit.getAngleDeg()), what, Numbers.fixed(hit.getStartS(), 2)));
    }

    private void pointerMoved() {
        if (canvas.selected() < 0) {
            status.setText(Texts.of("plan.pointer", Numbers.fixed(canvas.pointerX(), 1), Numbers.fixed(canvas.pointerY(), 1)));
        }
    }

    private void goTo(Operation operation) {
        if (operation == null) {
            return;
        }
        for (int k = 0; k < layout.getHits().size(); k++) {
            if (layout.getHits().get(k).getOperation() == operation) {
                canvas.select(k);
                return;
            }
        }
    }

    private void goTo(FindingRow row) {
        if (row.located()) {
            canvas.goTo(row.x(), row.y());
        }
    }

    /** Selects a hit by its number in the run, from 0; for tests and for whoever links here. */
    public void selectHit(int number) {
        canvas.select(number);
        hitSelected(number);
    }

    /** The picture. */
    public SheetCanvas canvas() {
        return canvas;
    }

    /** The line below the picture. */
    public String statusText() {
        return status.getText();
    }

    /** The table row that is marked for a tool. */
    public ToolUse markedTool() {
        return tabs.markedTool();
    }

    @Override
    public void reveal(EObject object) {
        for (EObject at = object; at != null; at = at.eContainer()) {
            if (at instanceof Layout found) {
                bar.select(found);
            } else if (at instanceof Operation operation && ((SheetJob) operation.eContainer()).getLayouts().contains(layout)) {
                goTo(operation);
            }
        }
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }
}
