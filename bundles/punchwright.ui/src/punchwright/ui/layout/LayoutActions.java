// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.Watch;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.shop.StockSheet;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Part;
import punchwright.model.work.WorkFactory;
import punchwright.planner.layouts.ArrangedSheet;
import punchwright.planner.layouts.KeptWriter;
import punchwright.planner.layouts.OrderLayouts;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** What the program does for a page, each beside the window: lay out, nest around, fill; and layouts as a whole. */
public final class LayoutActions {

    private final LayoutsPage page;
    private final LayoutRun run;
    private final LayoutRun context = new LayoutRun(words -> { }, () -> { });
    private final Button duplicate;
    private final Button remove;

    LayoutActions(LayoutsPage page, Composite below) {
        this.page = page;
        run = new LayoutRun(words -> page.bar().say(words, true), () -> {
            if (!page.isDisposed()) {
                page.bar().say("", false);
            }
        });
        Composite buttons = new Composite(below, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(4, 0).applyTo(buttons);
        duplicate = button(buttons, "layouts.empty", this::addEmpty);
        remove = button(buttons, "layouts.removeLayout", this::removeLayouts);
    }

    private static Button button(Composite parent, String key, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(Texts.of(key));
        button.setToolTipText(Texts.of(key + ".help"));
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.run()));
        return button;
    }

    void update() {
        duplicate.setEnabled(page.isReady());
        remove.setEnabled(page.row() != null);
    }

    private static WorkspacePaths paths() {
        return Session.current().orElseThrow().workspace().paths();
    }

    private OrderCopy copy() {
        return new OrderCopy(LayoutsPage.library(), page.order(), page.bar().machine());
    }

    /** Webs, margins and stock of the order on the machine. */
    void readContext(Consumer<OrderLayouts.Result> then) {
        if (page.bar().machine() != null) {
            context.orders(Texts.of("job.layoutInput", page.order().getNumber()), copy(), paths(),
                    OrderLayouts.Options.INPUT_ONLY, result -> {
                if (!page.isDisposed()) {
                    then.accept(result);
                }
            });
        }
    }

    /** The program's layouts; those in which a piece is locked stay. */
    public void layOut() {
        if (page.bar().machine() == null) {
            return;
        }
        page.bar().say(Texts.of("layouts.working"), true);
        int stay = (int) page.kept().stream().filter(LayoutActions::hasLocks).count();
        run.orders(Texts.of("job.layout", page.order().getNumber()), copy().lockedOnly(), paths(), OrderLayouts.Options.USUAL,
                result -> laidOut(result, stay));
    }

    private static boolean hasLocks(KeptLayout layout) {
        return layout.getPlacements().stream().anyMatch(KeptPlacement::isLocked);
    }

    private void laidOut(OrderLayouts.Result result, int stay) {
        if (page.isDisposed()) {
            return;
        }
        List<KeptLayout> gone = page.kept().stream().filter(l -> !hasLocks(l)).toList();
        if (page.kept().size() - gone.size() != stay) {
            page.bar().say(Texts.of("layouts.overtaken"), false);
            return;
        }
        // layouts that stay come back as the program's own: they are known by where their pieces lie
        List<KeptLayout> made = new KeptWriter(LayoutsPage.library(), page.order()).write(own(result));
        made.removeIf(m -> page.kept().stream().filter(LayoutActions::hasLocks).anyMatch(k -> KeptWriter.lieAlike(k, m)));
        String trouble = result.findings().stream().filter(Finding::isError).findFirst().map(Finding::message).orElse("");
        page.bar().say(trouble, false);
        if (!made.isEmpty() || !gone.isEmpty() && trouble.isEmpty()) {
            page.replace(Texts.of("layouts.do.layOut"), gone, made);
        }
    }

    /** The result with the records of the window in the place of the job's copies. */
    private OrderLayouts.Result own(OrderLayouts.Result result) {
        Map<String, Part> parts = new LinkedHashMap<>();
        result.parts().keySet().forEach(id -> parts.put(id, KeptEdits.part(id)));
        return new OrderLayouts.Result(page.bar().machine(), result.sheets(), parts, result.findings());
    }

    /** Places the pieces that are not locked anew around those that are; keeps the sheet where nothing is won. */
    public void nestAround() {
        sheet("layouts.do.nest", watch -> s -> s.aroundLocked(watch));
    }

    /** Adds pieces that the order still lacks where they find room. */
    public void fill() {
        BenchRow row = page.row();
        if (row == null) {
            return;
        }
        List<String> missing = new ArrayList<>();
        for (PartNeed need : page.tables().parts().shown()) {
            int copies = Math.max(0, need.most() - need.made()) / Math.max(1, row.kept().getRuns());
            if (row.sheet() != null && row.sheet().job().parts().stream().anyMatch(p -> p.id().equals(need.part().getId()))) {
                for (int i = 0; i < copies; i++) {
                    missing.add(need.part().getId());
                }
            }
        }
        sheet("layouts.do.fill", watch -> s -> s.filled(missing, watch));
    }

    private void sheet(String key, Function<Watch, Function<ArrangedSheet, ArrangedSheet>> work) {
        BenchRow row = page.row();
        if (row == null || row.sheet() == null) {
            return;
        }
        ArrangedSheet before = row.sheet();
        page.bar().say(Texts.of("layouts.working"), true);
        run.sheet(Texts.of(key), before, work, after -> {
            if (page.isDisposed()) {
                return;
            }
            boolean overtaken = page.row() == null || page.row().kept() != row.kept()
                    || !page.row().sheet().pieces().equals(before.pieces());
            boolean changed = !overtaken && page.edits().arrange(Texts.of(key), row.kept(), after);
            page.bar().say(overtaken ? Texts.of("layouts.overtaken") : changed ? "" : Texts.of("layouts.noBetter"), false);
        });
    }

    /** It is enough: the best so far is taken. */
    public void stop() {
        run.stop();
    }

    void drop() {
        run.drop();
        context.drop();
    }

    /** An empty sheet of the same material and stock as the one shown, else of the first material of the order. */
    public void addEmpty() {
        OrderLayouts.Result known = page.rows().context().orElse(null);
        KeptLayout like = page.row() == null ? null : page.row().kept();
        KeptLayout made = WorkFactory.eINSTANCE.createKeptLayout();
        made.setMachine(page.bar().machine());
        made.setId(new KeptWriter(LayoutsPage.library(), page.order()).freeId());
        if (like != null) {
            made.setMaterial(like.getMaterial());
            made.setThicknessMm(like.getThicknessMm());
            made.setStock(like.getStock());
            made.setWebMm(like.getWebMm());
        } else if (known != null && LayoutsPage.canLayOut(known)) {
            var sheets = known.sheets().stream().filter(s -> s.job() != null).findFirst().orElseThrow();
            made.setThicknessMm(sheets.thicknessMm());
            made.setMaterial(LayoutsPage.library().getMaterials().stream().filter(m -> m.getId().equals(sheets.material().id()))
                    .findFirst().orElse(null));
            made.setStock(stock(sheets.job().offers().getFirst().id()));
            made.setWebMm(KeptWriter.webMm(sheets));
        }
        page.replace(Texts.of("layouts.do.addLayout"), List.of(), List.of(made));
    }

    private static StockSheet stock(String id) {
        return LayoutsPage.library().getStock().stream().filter(s -> s.getId().equals(id)).findFirst().orElse(null);
    }

    /** Removes the selected layouts. */
    public void removeLayouts() {
        List<KeptLayout> gone = page.tables().layouts().selection().stream().map(BenchRow::kept).toList();
        if (!gone.isEmpty()) {
            page.replace(Texts.of("layouts.do.removeLayout"), gone, List.of());
        }
    }
}
