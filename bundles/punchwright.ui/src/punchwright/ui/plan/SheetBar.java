// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntConsumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

import punchwright.model.plan.Holding;
import punchwright.model.plan.Layout;
import punchwright.model.plan.Plan;
import punchwright.model.plan.SheetJob;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** Which sheet and which holding the picture shows, and how. */
final class SheetBar extends Composite {

    private final List<Layout> layouts = new ArrayList<>();
    private final Combo sheets;
    private final Combo holdings;
    private final ToolBar tools;
    private Consumer<Layout> onLayout = layout -> { };
    private IntConsumer onHolding = index -> { };

    SheetBar(Composite parent, Plan plan) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(5).margins(8, 4).applyTo(this);
        sheets = combo("plan.sheet", 400);
        holdings = combo("plan.holding", 210);
        tools = new ToolBar(this, SWT.FLAT);
        for (SheetJob job : plan.getJobs()) {
            for (Layout layout : job.getLayouts()) {
                layouts.add(layout);
                sheets.add(label(plan, job, layout));
            }
        }
        sheets.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> chosen()));
        holdings.addSelectionListener(SelectionListener.widgetSelectedAdapter(e ->
                onHolding.accept(holdings.getSelectionIndex() - 1)));
    }

    private Combo combo(String key, int width) {
        Label label = new Label(this, SWT.NONE);
        label.setText(Texts.of(key));
        Combo combo = new Combo(this, SWT.READ_ONLY);
        Accessibles.name(combo, Texts.of(key));
        GridDataFactory.fillDefaults().hint(width, SWT.DEFAULT).applyTo(combo);
        return combo;
    }

    private static String label(Plan plan, SheetJob job, Layout layout) {
        String material = job.getMaterial() == null ? "" : job.getMaterial().getName();
        return Texts.of("plan.layout", plan.getJobs().indexOf(job) + 1, layout.getNumber(), material,
                Numbers.plain(job.getThicknessMm()), Numbers.plain(layout.getLengthMm()), Numbers.plain(layout.getWidthMm()),
                layout.getRunCount());
    }

    private void chosen() {
        int index = sheets.getSelectionIndex();
        if (index < 0) {
            return;
        }
        Layout layout = layouts.get(index);
        holdings.removeAll();
        holdings.add(Texts.of("plan.allHoldings"));
        for (Holding holding : layout.getHoldings()) {
            holdings.add(Texts.of(holding.isTurned() ? "plan.holdingTurned" : "plan.holdingOf", holding.getIndex(),
                    Numbers.plain(Math.round(holding.getReachMinXMm())), Numbers.plain(Math.round(holding.getReachMaxXMm()))));
        }
        holdings.select(0);
        onLayout.accept(layout);
    }

    void selectFirst() {
        if (!layouts.isEmpty()) {
            sheets.select(0);
            chosen();
        }
    }

    void select(Layout layout) {
        int index = layouts.indexOf(layout);
        if (index >= 0 && index != sheets.getSelectionIndex()) {
            sheets.select(index);
            chosen();
        }
    }

    void onLayout(Consumer<Layout> what) {
        onLayout = what;
    }

    void onHolding(IntConsumer what) {
        onHolding = what;
    }

    void onView(SheetCanvas canvas) {
        item(Icons.FIT, "view.fit", SWT.PUSH, item -> canvas.fit());
        item(Icons.ZOOM_IN, "view.zoomIn", SWT.PUSH, item -> canvas.zoom(true));
        item(Icons.ZOOM_OUT, "view.zoomOut", SWT.PUSH, item -> canvas.zoom(false));
        ToolItem balloons = item(Icons.BALLOON, "view.balloons", SWT.CHECK, item -> canvas.showBalloons(item.getSelection()));
        balloons.setSelection(true);
    }

    private ToolItem item(Icons icon, String key, int style, Consumer<ToolItem> what) {
        ToolItem item = new ToolItem(tools, style);
        item.setImage(icon.image());
        item.setToolTipText(Texts.of(key));
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.accept(item)));
        return item;
    }
}
