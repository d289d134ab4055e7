// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;

import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** Lines of a drawing by ISO 128-2: thick to thin as 2 to 1, kinds by dash. */
public final class Pen {

    private static final int[] LONG_DASH_DOT = { 12, 3, 2, 3 };
    private static final int[] DASHED = { 6, 3 };
    private static final int[] DOTTED = { 2, 3 };
    private static final double ARROW = 9;

    private Pen() {
    }

    /** Continuous thick: visible edges. */
    public static void thick(GC gc, Ink ink) {
        line(gc, ink, 2, null);
    }

    /** Continuous thin: dimensions, leaders, hatching. */
    public static void thin(GC gc, Ink ink) {
        line(gc, ink, 1, null);
    }

    /** Dashed thin: not to be made, hidden, limits of a zone. */
    public static void dashed(GC gc, Ink ink) {
        line(gc, ink, 1, DASHED);
    }

    /** Dotted thin. */
    public static void dotted(GC gc, Ink ink) {
        line(gc, ink, 1, DOTTED);
    }

    /** Long-dash-dot thin: centre lines, limits of reach. */
    public static void centre(GC gc, Ink ink) {
        line(gc, ink, 1, LONG_DASH_DOT);
    }

    private static void line(GC gc, Ink ink, int width, int[] dash) {
        gc.setForeground(Inks.of(ink));
        gc.setLineWidth(width);
        if (dash == null) {
            gc.setLineStyle(SWT.LINE_SOLID);
        } else {
            gc.setLineDash(dash);
        }
    }

    /** Hatching at 45 degrees inside a box in pixels, with the pen that is set. */
    public static void hatch(GC gc, int x, int y, int width, int height, int pitch) {
        for (int k = pitch; k < width + height; k += pitch) {
            int x1 = x + Math.max(0, k - height);
            int y1 = y + Math.min(k, height);
            int x2 = x + Math.min(k, width);
            int y2 = y + Math.max(0, k - width);
            gc.drawLine(x1, y1, x2, y2);
        }
    }

    /** A dimension line with arrows and its figure above the middle; horizontal or vertical, in pixels. */
    public static void dimension(GC gc, int x1, int y1, int x2, int y2, String figure) {
        thin(gc, Ink.PENCIL);
        gc.drawLine(x1, y1, x2, y2);
        double angle = Math.atan2(y2 - y1, x2 - x1);
        arrow(gc, x1, y1, angle);
        arrow(gc, x2, y2, angle + Math.PI);
        gc.setForeground(Inks.of(Ink.GRAPHITE));
        org.eclipse.swt.graphics.Point size = gc.textExtent(figure);
        if (y1 == y2) {
            gc.drawText(figure, (x1 + x2 - size.x) / 2, y1 - size.y - 1, true);
        } else {
            sideways(gc, figure, x1 - 2, (y1 + y2) / 2, size);
        }
    }

    private static void sideways(GC gc, String figure, int x, int y, org.eclipse.swt.graphics.Point size) {
        org.eclipse.swt.graphics.Transform turn = new org.eclipse.swt.graphics.Transform(gc.getDevice());
        org.eclipse.swt.graphics.Transform before = new org.eclipse.swt.graphics.Transform(gc.getDevice());
        try {
            gc.getTransform(before);
            gc.getTransform(turn);
            turn.translate(x - size.y, y + size.x / 2f);
            turn.rotate(-90);
            gc.setTransform(turn);
            gc.drawText(figure, 0, 0, true);
            gc.setTransform(before);
        } finally {
            turn.dispose();
            before.dispose();
        }
    }

    /** A closed filled arrow head with its point at x, y; {@code angle} is the way the line leaves the point. */
    public static void arrow(GC gc, int x, int y, double angle) {
        gc.setBackground(gc.getForeground());
        int[] head = new int[6];
        head[0] = x;
        head[1] = y;
        for (int side = 0; side < 2; side++) {
            double a = angle + (side == 0 ? 0.17 : -0.17);
            head[2 + 2 * side] = (int) Math.round(x + ARROW * Math.cos(a));
            head[3 + 2 * side] = (int) Math.round(y + ARROW * Math.sin(a));
        }
        gc.fillPolygon(head);
    }
}
