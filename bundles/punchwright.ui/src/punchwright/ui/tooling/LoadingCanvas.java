// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;
import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import punchwright.model.shop.Machine;
import punchwright.ui.sheet.Pen;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** The loaded places of a machine side by side, in as many columns as there is room; arrow keys and clicks select a place. */
final class LoadingCanvas extends Canvas {

    private static final int CELL_PX = 208;
    private static final int PICTURE_PX = 150;
    private static final double LARGEST_SCALE = 2.2;

    private final ScrolledComposite scroll;
    private List<LoadedPlace> places = List.of();
    private Machine machine;
    private int selected = -1;
    private Consumer<LoadedPlace> onSelect = place -> { };

    LoadingCanvas(ScrolledComposite parent) {
        super(parent, SWT.DOUBLE_BUFFERED);
        scroll = parent;
        Accessibles.name(this, Texts.of("loading.picture"));
        addPaintListener(e -> paint(e.gc));
        addListener(SWT.MouseDown, e -> {
            setFocus();
            choose(at(e.x, e.y));
        });
        addListener(SWT.FocusIn, e -> redraw());
        addListener(SWT.FocusOut, e -> redraw());
        addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        addKeyListener(KeyListener.keyPressedAdapter(this::key));
        scroll.addListener(SWT.Resize, e -> fit());
    }

    /** Shows what is loaded; the first cell is the whole machine, where it is known. */
    void show(List<LoadedPlace> newPlaces, Machine newMachine) {
        machine = newMachine;
        places = List.copyOf(newPlaces);
        selected = -1;
        fit();
        redraw();
    }

    void onSelect(Consumer<LoadedPlace> what) {
        onSelect = what;
    }

    /** Marks a place without telling the listener. */
    void mark(LoadedPlace place) {
        selected = places.indexOf(place);
        reveal();
        redraw();
    }

    private int columns() {
        return Math.max(1, scroll.getClientArea().width / CELL_PX);
    }

    private int rowHeight(GC gc) {
        int rows = places.stream().mapToInt(PlacePainter::rows).max().orElse(3);
        return PlacePainter.height(PICTURE_PX, rows, gc.getFontMetrics().getHeight() + 1);
    }

    private int rowHeight() {
        GC gc = new GC(this);
        try {
            return rowHeight(gc);
        } finally {
            gc.dispose();
        }
    }

    private void fit() {
        int lines = (places.size() + first() + columns() - 1) / columns();
        scroll.setMinSize(CELL_PX, lines * rowHeight() + 8);
    }

    /** Cells before the first place. */
    private int first() {
        return machine == null ? 0 : 1;
    }

    private Rectangle cell(int place, int rowHeight) {
        int index = place + first();
        return new Rectangle(index % columns() * CELL_PX, index / columns() * rowHeight, CELL_PX, rowHeight);
    }

    private void paint(GC gc) {
        Rectangle area = getClientArea();
        gc.setBackground(Inks.of(Ink.PAPER));
        gc.fillRectangle(area);
        gc.setAntialias(SWT.ON);
        if (places.isEmpty()) {
            gc.setForeground(Inks.of(Ink.PENCIL));
            gc.drawText(Texts.of("loading.none"), 12, 12, true);
            return;
        }
        double largest = places.stream().mapToDouble(PlacePainter::diameterMm).max().orElse(50);
        PlacePainter painter = new PlacePainter(gc, Math.min(LARGEST_SCALE, (PICTURE_PX - 14) / largest));
        int height = rowHeight(gc);
        if (machine != null) {
            painter.overview(machine, places, cell(-1, height));
        }
        for (int k = 0; k < places.size(); k++) {
            painter.draw(places.get(k), cell(k, height), PICTURE_PX, k == selected);
        }
        if (isFocusControl()) {
            Pen.dotted(gc, Ink.ACCENT);
            gc.drawRectangle(0, 0, area.width - 1, area.height - 1);
        }
    }

    private int at(int x, int y) {
        int column = x / CELL_PX;
        int index = y / rowHeight() * columns() + column - first();
        return column < columns() && index < places.size() ? Math.max(-1, index) : -1;
    }

    private void key(KeyEvent e) {
        int last = places.size() - 1;
        switch (e.keyCode) {
            case SWT.ARROW_LEFT -> choose(Math.max(0, selected - 1));
            case SWT.ARROW_RIGHT -> choose(Math.min(last, selected + 1));
            case SWT.ARROW_UP -> choose(Math.max(0, selected - columns()));
            case SWT.ARROW_DOWN -> choose(Math.min(last, Math.max(0, selected) + columns()));
            case SWT.HOME -> choose(0);
            case SWT.END -> choose(last);
            default -> { }
        }
    }

    private void choose(int index) {
        selected = index;
        reveal();
        redraw();
        onSelect.accept(index < 0 || index >= places.size() ? null : places.get(index));
    }

    private void reveal() {
        if (selected >= 0) {
            Rectangle cell = cell(selected, rowHeight());
            Point origin = scroll.getOrigin();
            int shown = scroll.getClientArea().height;
            if (cell.y < origin.y || cell.y + cell.height > origin.y + shown) {
                scroll.setOrigin(0, cell.y);
            }
        }
    }
}
