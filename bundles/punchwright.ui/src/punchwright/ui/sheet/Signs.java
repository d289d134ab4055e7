// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;

import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/**
 * Signs of findings in a picture: octagon for an error, triangle for a warning, circle for a note. Shape first, colour second.
 */
public final class Signs {

    private static final Ink[] INKS = { Ink.ERROR, Ink.WARNING, Ink.NOTE };

    private Signs() {
    }

    /** A numbered sign beside a place, with a leader that ends in a dot on it (ISO 6433). */
    static void numbered(GC gc, MarkSigns.Sign sign) {
        int rank = sign.mark().rank();
        Pen.thin(gc, Ink.GRAPHITE);
        gc.drawLine(sign.placePx(), sign.placePy(), sign.px(), sign.py());
        gc.setBackground(Inks.of(Ink.GRAPHITE));
        gc.fillOval(sign.placePx() - 2, sign.placePy() - 2, 5, 5);
        numbered(gc, rank, sign.mark().number(), sign.px(), sign.py(), MarkSigns.SIZE_PX);
    }

    /** Draws the sign of a rank (0 error, 1 warning, 2 note) with a number in it about a point. */
    public static void numbered(GC gc, int rank, int number, int px, int py, int size) {
        shape(gc, rank, px, py, size);
        String text = Integer.toString(number);
        org.eclipse.swt.graphics.Point extent = gc.textExtent(text);
        gc.drawText(text, px - extent.x / 2, py - extent.y / 2 + (rank == 1 ? 3 : 0), true);
    }

    /** Draws the sign of a rank (0 error, 1 warning, 2 note) about a point. */
    public static void draw(GC gc, int rank, int px, int py, int size) {
        shape(gc, rank, px, py, size);
        glyph(gc, rank, px, py, size / 4);
    }

    private static void shape(GC gc, int rank, int px, int py, int size) {
        gc.setBackground(Inks.of(INKS[rank]));
        gc.setForeground(Inks.of(Ink.PAPER));
        gc.setLineWidth(2);
        gc.setLineStyle(SWT.LINE_SOLID);
        int r = size / 2;
        if (rank == 2) {
            gc.fillOval(px - r, py - r, size, size);
            gc.drawOval(px - r, py - r, size, size);
        } else {
            int[] corners = rank == 0 ? polygon(8, px, py, r, Math.PI / 8) : polygon(3, px, py + r / 4, r + 2, -Math.PI / 2);
            gc.fillPolygon(corners);
            gc.drawPolygon(corners);
        }
    }

    /** A cross for an error, a stroke for a warning or note: told apart also without colour. */
    private static void glyph(GC gc, int rank, int px, int py, int arm) {
        if (rank == 0) {
            gc.drawLine(px - arm, py - arm, px + arm, py + arm);
            gc.drawLine(px - arm, py + arm, px + arm, py - arm);
        } else {
            gc.drawLine(px, py - arm, px, py + arm);
        }
    }

    private static int[] polygon(int corners, int px, int py, int r, double start) {
        int[] points = new int[2 * corners];
        for (int k = 0; k < corners; k++) {
            double a = start + 2 * Math.PI * k / corners;
            points[2 * k] = (int) Math.round(px + r * Math.cos(a));
            points[2 * k + 1] = (int) Math.round(py + r * Math.sin(a));
        }
        return points;
    }
}
