// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.TabItem;
import org.eclipse.swt.widgets.Text;

import punchwright.engine.feature.Feature;
import punchwright.model.shop.Tool;
import punchwright.model.work.Part;
import punchwright.model.work.ToolWish;
import punchwright.planner.plans.PartWeighing;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Session;
import punchwright.ui.sheet.BalloonCells;
import punchwright.ui.sheet.Scene;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.table.Accessibles;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;

/**
 * The operations of a part on one machine: its picture and the loading on the left; on the right what makes each feature, below
 * it the alternatives, the tools passed over with their reasons, and the wishes. What is selected here is selected there.
 */
public final class OperationsPage extends Composite {

    private static final int REST_MS = 80;
    private static final double NEAR_PX = 8;

    private final OpenFile file;
    private final Part part;
    private final Wishes wishes;
    private final WeighingRun run = new WeighingRun();
    private final OperationsBar bar;
    private final Text summary;
    private final SheetCanvas canvas;
    private final LoadingPage loading;
    private final DataTable<FeatureLine> lines;
    private final OperationDetails details;
    private final Runnable follower = this::queue;
    private final ToolActions actions;
    private PartWeighing weighing;
    private FeatureScene scene;
    private boolean stale = true;
    private int queued;
    private int weighed;

    /** The page of the part at the root of a file. */
    public OperationsPage(Composite parent, OpenFile file, Part part) {
        super(parent, SWT.NONE);
        this.file = file;
        this.part = part;
        wishes = new Wishes(file, part);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(this);
        bar = new OperationsBar(this, part, OpenShop.machines());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        summary = new Text(this, SWT.READ_ONLY | SWT.MULTI | SWT.WRAP);
        Accessibles.name(summary, Texts.of("operations.summary"));
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 0).hint(300, SWT.DEFAULT).applyTo(summary);
        SashForm sash = new SashForm(this, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        TabFolder pictures = new TabFolder(sash, SWT.TOP);
        canvas = new SheetCanvas(pictures, Texts.of("operations.picture"));
        loading = new LoadingPage(pictures);
        tab(pictures, "operations.features", canvas);
        tab(pictures, "operations.loading", loading);
        SashForm right = new SashForm(sash, SWT.VERTICAL);
        lines = new DataTable<>(right, Texts.of("operations.table"), OperationColumns.lines(OpenShop.currency()));
        BalloonCells.in(lines.control(), OperationColumns.BALLOON);
        details = new OperationDetails(right, OpenShop.currency());
        sash.setWeights(38, 62);
        right.setWeights(58, 42);
        actions = new ToolActions(this);
        connect();
    }

    /** A tab with its text and what it shows. */
    static TabItem tab(TabFolder folder, String key, Control control) {
        TabItem item = new TabItem(folder, SWT.NONE);
        item.setText(Texts.of(key));
        item.setControl(control);
        return item;
    }

    private void connect() {
        lines.onSelect(this::lineSelected);
        OperationColumns.decorate(lines, details.ways(), details.passed());
        canvas.onSelect(this::picked);
        bar.onMachine(this::queue);
        actions.bind(bar);
        Session.addListener(follower);
        addListener(SWT.Show, e -> queue());
        addDisposeListener(e -> {
            Session.removeListener(follower);
            run.stop();
        });
    }

    /** Weighs again when the hand rests, at once when the page comes to the front. */
    private void queue() {
        stale = true;
        int turn = ++queued;
        getDisplay().timerExec(REST_MS, () -> {
            if (!isDisposed() && turn == queued && stale && isVisible()) {
                weigh();
            }
        });
    }

    private void weigh() {
        stale = false;
        Session session = Session.current().orElse(null);
        if (session == null || bar.machine() == null) {
            summary.setText(Texts.of("operations.noMachine"));
            return;
        }
        bar.busy(true);
        run.start(session.workspace().library(), part, bar.machine(), session.workspace().paths(), this::show);
    }

    private void show(WeighingRun.Result result) {
        if (isDisposed()) {
            return;
        }
        bar.busy(false);
        weighing = result.weighing();
        details.showWishes(part.getWishes());
        if (weighing == null) {
            summary.setText(result.error());
            scene = null;
            canvas.setScene(Scene.EMPTY);
            lines.setRows(List.of());
            lineSelected(null);
        } else {
            summary.setText(OperationsSummary.of(weighing, OpenShop.currency()));
            picture(result.scene());
            showLines(result.lines());
            loading.show(Loadings.of(weighing, OpenShop.library().orElseThrow(), bar.machine()), bar.machine());
            details.showFindings(weighing, part);
        }
        layout(true);
        weighed++;
    }

    private void picture(FeatureScene now) {
        boolean first = scene == null;
        scene = now;
        if (first) {
            canvas.setScene(scene.scene());
        } else {
            canvas.updateScene(scene.scene());
        }
    }

    private void showLines(List<FeatureLine> now) {
        Set<Integer> before = new LinkedHashSet<>();
        lines.selection().forEach(l -> before.addAll(l.numbers()));
        lines.setRows(now);
        List<FeatureLine> again = now.stream().filter(l -> l.numbers().stream().anyMatch(before::contains)).toList();
        lines.markOnly(again.isEmpty() && !now.isEmpty() ? now.subList(0, 1) : again.subList(0, Math.min(1, again.size())));
        lineSelected(lines.first());
    }

    private void lineSelected(FeatureLine line) {
        canvas.emphasise(line == null ? List.of() : FeatureScene.lines(line.features()));
        details.show(line, weighing);
        actions.update();
    }

    /** A click or a step in the picture. */
    private void picked(int hit) {
        if (scene == null) {
            return;
        }
        int number = scene.featureOf(hit);
        if (number < 0) {
            number = scene.featureAt(canvas.pointerX(), canvas.pointerY(), NEAR_PX / canvas.view().pxPerMm()).map(Feature::number)
                    .orElse(-1);
        }
        select(number);
    }

    /** Selects the line of a feature by its number; says whether there is one. */
    public boolean select(int featureNumber) {
        Optional<FeatureLine> line = lines.shown().stream().filter(l -> l.numbers().contains(featureNumber)).findFirst();
        line.ifPresent(l -> {
            lines.markOnly(List.of(l));
            lineSelected(l);
        });
        return line.isPresent();
    }

    /** The tool makes the selected features. */
    public boolean pin(Tool tool) {
        return lines.first() != null && wishes.pin(tool, lines.first().features());
    }

    /** The tool is not used for the part. */
    public boolean forbid(Tool tool) {
        return wishes.forbid(tool);
    }

    /** Takes back the selected wishes, else the pins of the selected features. */
    public boolean release() {
        List<ToolWish> chosen = kept().control().isFocusControl() ? kept().selection() : List.of();
        List<ToolWish> pins = lines.first() == null ? List.of() : wishes.pinsOf(lines.first().features());
        return wishes.release(chosen.isEmpty() ? pins : chosen);
    }

    /** Whether {@link #release()} would change something. */
    boolean canRelease() {
        return kept().control().isFocusControl() ? kept().first() != null
                : lines.first() != null && !wishes.pinsOf(lines.first().features()).isEmpty();
    }

    /** The file of the part. */
    OpenFile file() {
        return file;
    }

    /** The table of operations. */
    public DataTable<FeatureLine> lines() {
        return lines;
    }

    /** The alternatives of the selected line. */
    public DataTable<Way> ways() {
        return details.ways();
    }

    /** The tools passed over for the selected line. */
    public DataTable<PassedOver> passed() {
        return details.passed();
    }

    /** The wishes kept with the part. */
    public DataTable<ToolWish> kept() {
        return details.kept();
    }

    /** The picture. */
    public SheetCanvas canvas() {
        return canvas;
    }

    /** The loading. */
    public LoadingPage loading() {
        return loading;
    }

    /** Figures of the choice and of what the wishes cost. */
    public String summary() {
        return summary.getText();
    }

    /** How often a choice has been shown. */
    public int weighed() {
        return weighed;
    }

    @Override
    public boolean setFocus() {
        return lines.control().setFocus();
    }
}
