// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;

import punchwright.engine.tooling.Alternative;
import punchwright.model.shop.Tool;
import punchwright.model.work.ToolWish;
import punchwright.ui.table.DataTable;
import punchwright.ui.text.Texts;

/** Pin, forbid, take back: by buttons, keys (P, F, Delete, Enter on an alternative) and the context menu of each table. */
final class ToolActions {

    private final OperationsPage page;
    private DataTable<?> source;
    private Runnable update = () -> { };

    ToolActions(OperationsPage page) {
        this.page = page;
    }

    void bind(OperationsBar bar) {
        bar.onAction(() -> first().ifPresent(page::pin), () -> first().ifPresent(page::forbid), page::release);
        for (DataTable<?> table : List.of(page.lines(), page.ways(), page.passed(), page.kept())) {
            Table control = table.control();
            control.addListener(SWT.FocusIn, e -> from(table));
            control.addListener(SWT.Selection, e -> from(table));
            control.addKeyListener(KeyListener.keyPressedAdapter(this::key));
            menu(control);
        }
        page.ways().onOpen(way -> first().ifPresent(page::pin));
        update = () -> bar.tool(first().map(Tool::getName).orElse(null), page.canRelease());
    }

    /** Names the tool that the buttons act on. */
    void update() {
        update.run();
    }

    private void from(DataTable<?> table) {
        source = table;
        update();
    }

    private void key(KeyEvent e) {
        if ((e.stateMask & SWT.MODIFIER_MASK) != 0) {
            return;
        }
        switch (e.keyCode) {
            case 'p' -> first().ifPresent(page::pin);
            case 'f' -> first().ifPresent(page::forbid);
            case SWT.DEL -> page.release();
            default -> {
                return;
            }
        }
        e.doit = false;
    }

    private void menu(Table table) {
        Menu menu = new Menu(table);
        table.setMenu(menu);
        menu.addListener(SWT.Show, e -> fill(menu));
    }

    private void fill(Menu menu) {
        for (MenuItem item : menu.getItems()) {
            item.dispose();
        }
        List<Tool> tools = tools();
        tools.forEach(t -> item(menu, Texts.of("operations.pin.tool", t.getName()) + "\tP", () -> page.pin(t)));
        tools.forEach(t -> item(menu, Texts.of("operations.forbid.tool", t.getName()) + "\tF", () -> page.forbid(t)));
        MenuItem release = item(menu, Texts.of("operations.release") + "\t" + Texts.of("key.delete"), page::release);
        release.setEnabled(page.canRelease());
    }

    private static MenuItem item(Menu menu, String text, Runnable what) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(e -> what.run()));
        return item;
    }

    private Optional<Tool> first() {
        return tools().stream().findFirst();
    }

    /** Tools of what is selected; of an alternative those first that the chosen way does without. */
    List<Tool> tools() {
        if (source == page.passed() && page.passed().first() != null) {
            return OpenShop.named(page.passed().first().tool()).stream().toList();
        }
        if (source == page.kept() && page.kept().first() instanceof ToolWish wish) {
            return wish.getTool() == null ? List.of() : List.of(wish.getTool());
        }
        Alternative chosen = page.lines().first() == null ? null : page.lines().first().chosen();
        Alternative way = source == page.ways() && page.ways().first() != null ? page.ways().first().way() : chosen;
        if (way == null) {
            return List.of();
        }
        List<punchwright.engine.tooling.Tool> ordered = new ArrayList<>(way.tools().stream().distinct().toList());
        if (chosen != null && chosen != way) {
            ordered.sort((a, b) -> Boolean.compare(chosen.tools().contains(a), chosen.tools().contains(b)));
        }
        return ordered.stream().map(t -> OpenShop.record(t.id())).flatMap(Optional::stream).toList();
    }
}
