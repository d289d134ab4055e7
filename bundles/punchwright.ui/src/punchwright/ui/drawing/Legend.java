// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import punchwright.ui.sheet.LineKind;
import punchwright.ui.sheet.Scene;
import punchwright.ui.table.Accessibles;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** What the lines of the picture stand for: a sample and a word for each kind that occurs, in as many rows as it takes. */
public final class Legend extends Canvas {

    private static final int SAMPLE_PX = 40;
    private static final int GAP_PX = 8;

    private List<LineKind> kinds = List.of(LineKind.EDGE);

    /** A legend with nothing but edges. */
    public Legend(Composite parent) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        Accessibles.name(this, Texts.of("legend.name"));
        addPaintListener(e -> paint(e.gc, getClientArea().width, true));
    }

    /** Shows the kinds of a scene. */
    public void show(Scene scene) {
        kinds = new ArrayList<>();
        if (!scene.parts().isEmpty()) {
            kinds.add(LineKind.EDGE);
        }
        kinds.addAll(scene.lines().kinds());
        setToolTipText(String.join(", ", kinds.stream().map(LineKind::label).toList()));
        redraw();
        getParent().layout();
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        GC gc = new GC(this);
        try {
            int width = widthHint == SWT.DEFAULT ? getParent().getClientArea().width : widthHint;
            return new Point(width, paint(gc, Math.max(200, width), false));
        } finally {
            gc.dispose();
        }
    }

    /** Draws, or only measures; returns the height. */
    private int paint(GC gc, int width, boolean draw) {
        int height = gc.getFontMetrics().getHeight() + GAP_PX;
        int x = GAP_PX;
        int y = 0;
        if (draw) {
            gc.setAntialias(SWT.ON);
            gc.setBackground(Inks.of(Ink.PAPER));
            gc.fillRectangle(getClientArea());
        }
        for (LineKind kind : kinds) {
            Point size = gc.textExtent(kind.label());
            int needed = SAMPLE_PX + GAP_PX + size.x + 2 * GAP_PX;
            if (x > GAP_PX && x + needed > width) {
                x = GAP_PX;
                y += height;
            }
            if (draw) {
                int middle = y + height / 2;
                kind.draw(gc, new int[] { x, middle, x + SAMPLE_PX / 2, middle, x + SAMPLE_PX, middle, x + SAMPLE_PX, middle },
                        false);
                gc.setForeground(Inks.of(Ink.GRAPHITE));
                gc.drawText(kind.label(), x + SAMPLE_PX + GAP_PX, middle - size.y / 2, true);
            }
            x += needed;
        }
        return y + height;
    }
}
