// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

import punchwright.model.shop.StockSheet;
import punchwright.model.work.Part;
import punchwright.model.work.WorkPackage.Literals;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** The line above the picture of a sheet: its stock item, web and runs, and what can be done with pieces. */
final class SheetControls extends Composite {

    private static final int MOST_RUNS = 100_000;

    private final Combo stock;
    private final Combo web;
    private final Spinner runs;
    private final Combo part;
    private final Button add;
    private final ToolBar tools;
    private final List<ToolItem> forPieces = new ArrayList<>();
    private List<StockSheet> offers = List.of();
    private List<Double> webs = List.of();
    private List<Part> parts = List.of();
    private boolean filling;

    SheetControls(Composite parent, SheetBench bench, SheetCanvas canvas) {
        super(parent, SWT.NONE);
        RowLayout row = new RowLayout(SWT.HORIZONTAL);
        row.center = true;
        row.spacing = 6;
        row.marginLeft = 8;
        setLayout(row);
        stock = combo("layouts.stock", 190);
        web = combo("layouts.web", 70);
        label("layouts.runs");
        runs = new Spinner(this, SWT.BORDER);
        runs.setValues(1, 1, MOST_RUNS, 0, 1, 10);
        Accessibles.name(runs, Texts.of("layouts.runs"));
        tools = new ToolBar(this, SWT.FLAT);
        item(Icons.TURN_BACK, "layouts.turnBack", () -> bench.turn(1));
        item(Icons.TURN, "layouts.turn", () -> bench.turn(-1));
        item(Icons.LOCK, "layouts.lock", bench::lock);
        item(Icons.REMOVE, "layouts.remove", bench::remove);
        part = combo("layouts.part", 130);
        add = new Button(this, SWT.PUSH);
        add.setText(Texts.of("layouts.add"));
        add.setToolTipText(Texts.of("layouts.add.help"));
        add.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> {
            if (part.getSelectionIndex() >= 0) {
                bench.add(parts.get(part.getSelectionIndex()).getId());
            }
        }));
        ToolBar view = new ToolBar(this, SWT.FLAT);
        view(view, Icons.FIT, "view.fit", canvas::fit);
        view(view, Icons.ZOOM_IN, "view.zoomIn", () -> canvas.zoom(true));
        view(view, Icons.ZOOM_OUT, "view.zoomOut", () -> canvas.zoom(false));
    }

    private void label(String key) {
        new Label(this, SWT.NONE).setText(Texts.of(key));
    }

    private Combo combo(String key, int width) {
        label(key);
        Combo combo = new Combo(this, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setLayoutData(new RowData(width, SWT.DEFAULT));
        Accessibles.name(combo, Texts.of(key));
        return combo;
    }

    private void item(Icons icon, String key, Runnable what) {
        forPieces.add(view(tools, icon, key, what));
    }

    private static ToolItem view(ToolBar bar, Icons icon, String key, Runnable what) {
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        item.setImage(icon.image());
        item.setToolTipText(Texts.of(key));
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.run()));
        return item;
    }

    /** Called with the feature of the layout that a person sets and its value. */
    void onSet(BiConsumer<EStructuralFeature, Object> what) {
        stock.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> chosen(stock, i ->
                what.accept(Literals.KEPT_LAYOUT__STOCK, offers.get(i)))));
        web.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> chosen(web, i ->
                what.accept(Literals.KEPT_LAYOUT__WEB_MM, webs.get(i)))));
        runs.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> {
            if (!filling) {
                what.accept(Literals.KEPT_LAYOUT__RUNS, runs.getSelection());
            }
        }));
    }

    private static void chosen(Combo combo, Consumer<Integer> what) {
        if (combo.getSelectionIndex() >= 0) {
            what.accept(combo.getSelectionIndex());
        }
    }

    /** Shows a layout with what can be chosen for it; null disables everything. */
    void show(BenchRow row, SheetChoices choices) {
        filling = true;
        offers = choices.stock();
        parts = choices.parts();
        int chosenPart = Math.max(0, part.getSelectionIndex());
        fill(stock, offers.stream().map(s -> String.valueOf(s.getName())).toList(), row == null ? -1
                : offers.indexOf(row.kept().getStock()));
        double now = row == null ? 0 : row.kept().getWebMm();
        webs = new ArrayList<>(choices.webs());
        if (now > 0 && webs.stream().noneMatch(w -> Math.abs(w - now) < 1e-6)) {
            webs.add(now);
        }
        fill(web, webs.stream().map(w -> Numbers.plain(Math.round(w * 1000) / 1000.0)).toList(), now <= 0 ? 0 : nearest(now));
        fill(part, parts.stream().map(KeptNames::label).toList(), Math.min(chosenPart, parts.size() - 1));
        runs.setSelection(row == null ? 1 : row.kept().getRuns());
        for (var control : List.of(stock, web, runs, part, add)) {
            control.setEnabled(row != null && row.sheet() != null);
        }
        stock.setEnabled(row != null);
        filling = false;
    }

    private int nearest(double webMm) {
        int best = 0;
        for (int i = 0; i < webs.size(); i++) {
            best = Math.abs(webs.get(i) - webMm) < Math.abs(webs.get(best) - webMm) ? i : best;
        }
        return best;
    }

    private static void fill(Combo combo, List<String> texts, int selected) {
        if (!List.of(combo.getItems()).equals(texts)) {
            combo.setItems(texts.toArray(String[]::new));
        }
        if (selected < 0) {
            combo.deselectAll();
        } else if (combo.getSelectionIndex() != selected) {
            combo.select(selected);
        }
    }

    /** Whether pieces are selected. */
    void pieces(boolean some) {
        forPieces.forEach(i -> i.setEnabled(some));
    }
}
