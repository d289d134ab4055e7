// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;

import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/**
 * How lines of a drawing look by what they stand for: each has its own kind of line or sign beside its colour. Edges thick and
 * continuous, hidden and not made dashed, as in ISO 128-2; the other kinds take line types of the same standard with our own
 * meaning.
 */
public enum LineKind {
    /** Edges of a part. */
    EDGE(Ink.GRAPHITE, 2, null, Sign.NONE),
    /** A line that should close and does not. */
    OPEN(Ink.ERROR, 2, new int[] { 7, 3 }, Sign.ENDS),
    /** A closed contour that belongs to no part. */
    LOOSE(Ink.GRAPHITE, 1, null, Sign.NONE),
    /** Marked on the face. */
    MARK(Ink.TOOL_1, 1, new int[] { 2, 2 }, Sign.NONE),
    /** A form above the sheet. */
    FORM_UP(Ink.TOOL_3, 2, null, Sign.UP),
    /** A form below the sheet. */
    FORM_DOWN(Ink.TOOL_2, 2, null, Sign.DOWN),
    /** Where it is bent later. */
    BEND_LINE(Ink.ACCENT, 1, new int[] { 14, 3, 2, 3, 2, 3 }, Sign.NONE),
    /** Filled areas, which are not cut. */
    FILLED(Ink.PENCIL, 1, null, Sign.CROSSED),
    /** Not made. */
    IGNORE(Ink.PENCIL, 1, new int[] { 5, 4 }, Sign.NONE),
    /** On a layer that is off or frozen. */
    HIDDEN(Ink.FAINT, 1, new int[] { 2, 5 }, Sign.NONE);

    /** What stands on a line beside its kind. */
    private enum Sign {
        NONE, ENDS, UP, DOWN, CROSSED
    }

    private static final int ARM = 4;

    private final Ink ink;
    private final int width;
    private final int[] dash;
    private final Sign sign;

    LineKind(Ink ink, int width, int[] dash, Sign sign) {
        this.ink = ink;
        this.width = width;
        this.dash = dash;
        this.sign = sign;
    }

    /** What the legend says. */
    public String label() {
        return Texts.find("line." + name().toLowerCase(Locale.ROOT));
    }

    /** Draws a line given in pixels, x and y in turn. */
    public void draw(GC gc, int[] line, boolean closed) {
        gc.setForeground(Inks.of(ink));
        gc.setLineWidth(width);
        if (dash == null) {
            gc.setLineStyle(SWT.LINE_SOLID);
        } else {
            gc.setLineDash(dash);
        }
        if (closed) {
            gc.drawPolygon(line);
        } else {
            gc.drawPolyline(line);
        }
        gc.setLineStyle(SWT.LINE_SOLID);
        sign(gc, line, closed);
    }

    private void sign(GC gc, int[] line, boolean closed) {
        int n = line.length;
        gc.setLineWidth(2);
        switch (sign) {
            case ENDS -> {
                square(gc, line[0], line[1]);
                square(gc, line[n - 2], line[n - 1]);
            }
            case UP, DOWN -> {
                int k = closed ? 0 : n / 4 * 2;
                int tip = sign == Sign.UP ? -ARM : ARM;
                gc.setBackground(gc.getForeground());
                gc.fillPolygon(new int[] { line[k] - ARM, line[k + 1] - tip, line[k] + ARM, line[k + 1] - tip, line[k], line[k
                        + 1] + tip });
            }
            case CROSSED -> {
                gc.setLineWidth(1);
                if (n >= 8) {
                    gc.drawLine(line[0], line[1], line[n / 4 * 2], line[n / 4 * 2 + 1]);
                }
            }
            default -> { }
        }
    }

    private static void square(GC gc, int x, int y) {
        gc.drawRectangle(x - ARM, y - ARM, 2 * ARM, 2 * ARM);
    }
}
