// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.Text;

import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.Order;
import punchwright.planner.layouts.OrderLayouts;
import punchwright.ui.session.OpenFile;
import punchwright.ui.session.Session;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;

/**
 * The layouts of an order on one machine: the sheet with its pieces on the left, the table of layouts and what they come to on
 * the right. What is selected here is selected there; every change is a command on the order's file.
 */
public final class LayoutsPage extends Composite {

    private static final int REST_MS = 60;

    private final OpenFile file;
    private final Order order;
    private final LayoutsBar bar;
    private final Text summary;
    private final SheetControls controls;
    private final SheetCanvas canvas;
    private final LayoutTables tables;
    private final SheetBench bench;
    private final KeptEdits edits;
    private final BenchRows rows = new BenchRows();
    private final LayoutActions actions;
    private final Runnable follower = this::changed;
    private final Runnable sessionFollower = this::queue;
    private KeptLayout shown;
    private String contextKey = "";
    private int queued;

    /** The page of the order at the root of a file. */
    public LayoutsPage(Composite parent, OpenFile file, Order order) {
        super(parent, SWT.NONE);
        this.file = file;
        this.order = order;
        edits = new KeptEdits(file, order);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(this);
        bar = new LayoutsBar(this, machines());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        summary = new Text(this, SWT.READ_ONLY | SWT.MULTI | SWT.WRAP);
        Accessibles.name(summary, Texts.of("layouts.summary"));
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 0).hint(300, SWT.DEFAULT).applyTo(summary);
        SashForm sash = new SashForm(this, SWT.HORIZONTAL);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        Composite left = new Composite(sash, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(left);
        Composite place = new Composite(left, SWT.NONE);
        GridLayoutFactory.fillDefaults().applyTo(place);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(place);
        canvas = new SheetCanvas(left, Texts.of("layouts.picture"));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(canvas);
        bench = new SheetBench(canvas, edits, KeptNames::label);
        controls = new SheetControls(place, bench, canvas);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(controls);
        SashForm right = new SashForm(sash, SWT.VERTICAL);
        Composite above = new Composite(right, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(above);
        tables = new LayoutTables(above, new TabFolder(right, SWT.TOP), currency());
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tables.layouts().control());
        actions = new LayoutActions(this, above);
        sash.setWeights(54, 46);
        right.setWeights(45, 55);
        connect();
    }

    private void connect() {
        bar.onMachine(this::otherMachine);
        bar.onAction(actions::layOut, actions::nestAround, actions::fill, actions::stop);
        controls.onSet(this::set);
        bench.onChange(this::live);
        tables.layouts().onSelect(row -> show(row == null ? null : row.kept()));
        tables.pieces().onSelect(line -> bench.select(tables.pieces().selection().stream().map(LayoutTables.PieceLine::index)
                .toList()));
        tables.problems().onSelect(line -> {
            if (line != null) {
                line.problem().finding().placeIfAny().ifPresent(at -> canvas.show(at.x(), at.y()));
                bench.select(line.problem().pieces().stream().map(n -> n - 1).toList());
            }
        });
        file.addListener(follower);
        Session.addListener(sessionFollower);
        addListener(SWT.Show, e -> queue());
        addDisposeListener(e -> {
            file.removeListener(follower);
            Session.removeListener(sessionFollower);
            actions.drop();
        });
        refresh();
    }

    /** What was known of the machine before does not hold for this one. */
    private void otherMachine() {
        rows.context(null);
        contextKey = "";
        refresh();
        queue();
    }

    private static List<Machine> machines() {
        return library().getMachines().stream().filter(m -> m.getStatus() == ItemStatus.IN_USE).toList();
    }

    static Library library() {
        return Session.current().orElseThrow().workspace().library();
    }

    private static String currency() {
        return Session.current().map(s -> s.workspace().library().getCurrency()).orElse("");
    }

    private void changed() {
        if (!isDisposed() && Session.current().isPresent()) {
            refresh();
            queue();
        }
    }

    /** Asks for webs, margins and stock anew when the order's lines, the machine or the shop have changed. */
    private void queue() {
        int turn = ++queued;
        getDisplay().timerExec(REST_MS, () -> {
            if (!isDisposed() && turn == queued && isVisible() && Session.current().isPresent()) {
                String key = contextKey();
                if (!key.equals(contextKey)) {
                    contextKey = key;
                    actions.readContext(result -> {
                        rows.context(result);
                        refresh();
                    });
                }
            }
        });
    }

    private String contextKey() {
        StringBuilder key = new StringBuilder(String.valueOf(bar.machine() == null ? null : bar.machine().getId()));
        order.getLines().forEach(l -> key.append('|').append(l.getItem() == null ? null : l.getItem().getId()).append(' ')
                .append(l.getQuantity()).append(l.getWant()));
        Session.current().map(s -> s.fileOf(s.workspace().library())).ifPresent(f -> key.append('|').append(f.isDirty())
                .append(f.undoLabel()));
        return key.toString();
    }

    /** Reads the order's layouts and shows them; the selection stays. */
    void refresh() {
        List<BenchRow> now = rows.read(order, bar.machine());
        tables.show(rows, PartNeed.of(order, now));
        BenchRow row = now.stream().filter(r -> r.kept() == shown).findFirst().orElse(now.isEmpty() ? null : now.getFirst());
        tables.layouts().markOnly(row == null ? List.of() : List.of(row));
        show(row == null ? null : row.kept());
    }

    private void show(KeptLayout kept) {
        shown = kept;
        BenchRow row = row();
        bench.show(row);
        bar.enable(bar.machine() != null && rows.context().isPresent(), row != null && row.sheet() != null);
        controls.show(row, row == null ? SheetChoices.NONE
                : SheetChoices.of(row.kept(), library(), rows, tables.parts().shown()));
        actions.update();
        live();
    }

    /** What changes with the hand: figures, check, selection. */
    private void live() {
        tables.show(bench.sheet(), bench.problems(), bench.selected());
        controls.pieces(!bench.selected().isEmpty());
        String words = LayoutsSummary.of(rows, bench, tables.parts().shown(), tables.totals().shown(), currency());
        if (!words.equals(summary.getText())) {
            int before = summary.getLineCount();
            summary.setText(words);
            if (summary.getLineCount() != before) {
                layout(true);
            }
        }
    }

    private void set(EStructuralFeature feature, Object value) {
        if (shown != null) {
            edits.set(Texts.of("layouts.do.set", Texts.of(feature)), shown, feature, value);
        }
    }

    /** The row that is shown, or null. */
    BenchRow row() {
        return rows.rows().stream().filter(r -> r.kept() == shown).findFirst().orElse(null);
    }

    /** Shows a kept layout, and selects the piece of an index, -1 for none. */
    public void reveal(KeptLayout kept, int piece) {
        if (kept.getMachine() != bar.machine()) {
            bar.choose(kept.getMachine());
        }
        shown = kept;
        refresh();
        if (piece >= 0 && row() != null && row().sheet() != null) {
            bench.select(List.of(piece));
        }
    }

    /** Puts layouts in the place of others and shows the first new one. */
    void replace(String label, List<KeptLayout> gone, List<KeptLayout> made) {
        shown = made.isEmpty() ? null : made.getFirst();
        edits.replace(label, new ArrayList<>(gone), new ArrayList<>(made));
    }

    /** Layouts of the machine as they are kept. */
    List<KeptLayout> kept() {
        return order.getLayouts().stream().filter(l -> Objects.equals(l.getMachine(), bar.machine())).toList();
    }

    Order order() {
        return order;
    }

    LayoutsBar bar() {
        return bar;
    }

    BenchRows rows() {
        return rows;
    }

    KeptEdits edits() {
        return edits;
    }

    /** Whether webs, margins and stock are known. */
    public boolean isReady() {
        return rows.context().isPresent();
    }

    /** What the program does. */
    public LayoutActions actions() {
        return actions;
    }

    /** The sheet that is arranged. */
    public SheetBench bench() {
        return bench;
    }

    /** The tables. */
    public LayoutTables tables() {
        return tables;
    }

    /** The picture. */
    public SheetCanvas canvas() {
        return canvas;
    }

    /** Figures of all layouts and of the sheet that is shown. */
    public String summary() {
        return summary.getText();
    }

    @Override
    public boolean setFocus() {
        return canvas.setFocus();
    }

    /** What the context says of the order: the findings when nothing can be laid out. */
    static boolean canLayOut(OrderLayouts.Result result) {
        return result.sheets().stream().anyMatch(s -> s.job() != null);
    }
}
