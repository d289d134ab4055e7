// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;

import punchwright.planner.layouts.Piece;
import punchwright.ui.sheet.SheetCanvas;
import punchwright.ui.sheet.SheetHand;
import punchwright.ui.sheet.Viewport;

/**
 * The hand on a sheet. A press on a piece selects it (with Shift or Ctrl beside others), a drag moves it: it snaps to margins and
 * neighbours a web apart, with Alt it does not. Keys: arrows 1 mm, with Shift 10 mm, with Alt 0.1 mm, with Ctrl on to the next
 * stop; R and Shift+R turn, L locks, Delete removes, Insert adds one more, Page Down and Page Up go to the next piece, Esc lets
 * go.
 */
final class PieceHand implements SheetHand {

    private static final double SNAP_PX = 10;
    private static final double DRAG_FROM_PX = 3;
    private static final double STEP_MM = 1;
    private static final double LARGE_MM = 10;
    private static final double SMALL_MM = 0.1;

    private final SheetBench bench;
    private final SheetCanvas canvas;
    private int index = -1;
    private boolean moving;
    private double fromX;
    private double fromY;

    PieceHand(SheetBench bench, SheetCanvas canvas) {
        this.bench = bench;
        this.canvas = canvas;
    }

    @Override
    public boolean down(double x, double y, int state) {
        index = bench.at(x, y);
        moving = false;
        fromX = x;
        fromY = y;
        if (index < 0) {
            bench.select(List.of());
            return false;
        }
        bench.select((state & (SWT.SHIFT | SWT.MOD1)) != 0 ? toggled(index) : List.of(index));
        return true;
    }

    private List<Integer> toggled(int piece) {
        List<Integer> all = new ArrayList<>(bench.selected());
        if (!all.remove((Integer) piece)) {
            all.add(piece);
        }
        return all;
    }

    @Override
    public void drag(double x, double y, int state) {
        double scale = canvas.view().pxPerMm();
        if (!canMove() || !moving && Math.hypot(x - fromX, y - fromY) * scale <= DRAG_FROM_PX) {
            return;
        }
        if (!moving) {
            bench.take(index);
            moving = true;
        }
        Piece p = bench.row().sheet().pieces().get(index);
        double toX = p.xMm() + x - fromX;
        double toY = p.yMm() + y - fromY;
        boolean free = (state & SWT.ALT) != 0;
        bench.hold(free ? bench.row().sheet().moved(index, toX, toY)
                : bench.row().sheet().snapped(index, toX, toY, SNAP_PX / scale), index);
    }

    private boolean canMove() {
        return index >= 0 && bench.row() != null && bench.row().sheet() != null && index < bench.row().sheet().pieces().size()
                && !bench.row().sheet().pieces().get(index).locked();
    }

    @Override
    public void drop(double x, double y, int state) {
        int piece = index;
        index = -1;
        if (moving) {
            moving = false;
            bench.putDown(piece);
        }
    }

    @Override
    public boolean key(int keyCode, int state) {
        int turned = (state & SWT.SHIFT) != 0 ? -1 : 1;
        switch (keyCode) {
            case SWT.ARROW_LEFT, SWT.ARROW_RIGHT, SWT.ARROW_UP, SWT.ARROW_DOWN -> {
                return arrow(keyCode, state);
            }
            case 'r' -> bench.turn(turned);
            case 'l' -> bench.lock();
            case SWT.DEL -> bench.remove();
            case SWT.INSERT -> bench.addSame();
            case SWT.PAGE_DOWN -> bench.step(1);
            case SWT.PAGE_UP -> bench.step(-1);
            case SWT.ESC -> letGo();
            default -> {
                return false;
            }
        }
        return true;
    }

    private boolean arrow(int keyCode, int state) {
        if (bench.selected().isEmpty()) {
            return false;
        }
        int dx = keyCode == SWT.ARROW_LEFT ? -1 : keyCode == SWT.ARROW_RIGHT ? 1 : 0;
        int dy = keyCode == SWT.ARROW_DOWN ? -1 : keyCode == SWT.ARROW_UP ? 1 : 0;
        if ((state & SWT.MOD1) != 0) {
            bench.push(dx, dy);
        } else {
            double mm = (state & SWT.SHIFT) != 0 ? LARGE_MM : (state & SWT.ALT) != 0 ? SMALL_MM : STEP_MM;
            bench.nudge(dx * mm, dy * mm);
        }
        return true;
    }

    private void letGo() {
        if (moving) {
            moving = false;
            index = -1;
            bench.putBack();
        } else {
            bench.select(List.of());
        }
    }

    @Override
    public void paint(GC gc, Viewport view) {
        if (bench.sheet() != null) {
            new PiecePainter(gc, view, bench).draw();
        }
    }
}
