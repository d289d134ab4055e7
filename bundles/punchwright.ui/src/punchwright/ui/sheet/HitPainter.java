// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.HashMap;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** Draws the hits of a tool: outlines where they can be seen, dots where they cannot. Only those in sight. */
final class HitPainter {

    /** Below this size in pixels an outline is no more than a dot. */
    private static final double DOT_BELOW_PX = 3.5;
    /** Below this size only the area is filled: a line round it would be all one sees. */
    private static final double LINE_FROM_PX = 7;
    /** Below this size a dash cannot be told from a line. */
    private static final double DASH_FROM_PX = 14;
    private static final int[][] DASHES = { null, { 4, 2 }, { 1, 2 } };

    private final GC gc;
    private final Viewport view;
    private final Rectangle window;
    private final Shown shown;

    /** What counts; the rest is drawn faint. */
    HitPainter(GC gc, Viewport view, Rectangle window, Shown shown) {
        this.gc = gc;
        this.view = view;
        this.window = window;
        this.shown = shown;
    }

    void draw(HitGroup group) {
        boolean other = shown.tool() > 0 && shown.tool() != group.balloon();
        if (other || shown.holding() >= 0) {
            drawPass(group, false, other);
        }
        if (!other) {
            drawPass(group, true, false);
        }
    }

    private void drawPass(HitGroup group, boolean counts, boolean whole) {
        Ink ink = counts ? Ink.tool(group.balloon()) : Ink.FAINT;
        Color line = counts ? Inks.mixed(ink, Ink.GRAPHITE, 0.6) : Inks.of(Ink.FAINT);
        gc.setForeground(line);
        double sizePx = 2 * group.outline().radius() * view.pxPerMm();
        int[] dash = DASHES[Math.min(Ink.toolRound(group.balloon()), DASHES.length - 1)];
        gc.setLineWidth(1);
        if (dash == null || sizePx < DASH_FROM_PX) {
            gc.setLineStyle(SWT.LINE_SOLID);
        } else {
            gc.setLineDash(dash);
        }
        Stamp stamp = sizePx < DOT_BELOW_PX ? dots(sizePx, line)
                : sizePx < LINE_FROM_PX ? outlines(group, line, false) : outlines(group, counts ? Inks.mixed(ink, Ink.PAPER, 0.35)
                : null, true);
        double reach = group.outline().radius();
        double minX = view.x(window.x) - reach;
        double maxX = view.x(window.x + window.width) + reach;
        double maxY = view.y(window.y) + reach;
        double minY = view.y(window.y + window.height) - reach;
        group.within(minX, minY, maxX, maxY, i -> {
            if (whole || counts == (shown.holding() < 0 || group.holding(i) == shown.holding())) {
                stamp.at(view.px(group.x(i)), view.py(group.y(i)), group.angle(i));
            }
        });
    }

    private Stamp dots(double sizePx, Color colour) {
        gc.setBackground(colour);
        int size = Math.max(1, (int) Math.round(sizePx));
        return (px, py, angle) -> gc.fillRectangle(px - size / 2, py - size / 2, size, size);
    }

    private Stamp outlines(HitGroup group, Color fill, boolean withLine) {
        if (fill != null) {
            gc.setBackground(fill);
        }
        if (group.roundDiameter() > 0) {
            int size = view.length(group.roundDiameter());
            return (px, py, angle) -> {
                if (fill != null) {
                    gc.fillOval(px - size / 2, py - size / 2, size, size);
                }
                if (withLine) {
                    gc.drawOval(px - size / 2, py - size / 2, size, size);
                }
            };
        }
        Map<Double, int[]> byAngle = new HashMap<>();
        int[] moved = new int[group.outline().size() * 2];
        return (px, py, angle) -> {
            int[] shape = byAngle.computeIfAbsent(angle, a -> pixels(group.outline().placed(a, 0, 0)));
            for (int k = 0; k < shape.length; k += 2) {
                moved[k] = px + shape[k];
                moved[k + 1] = py + shape[k + 1];
            }
            if (fill != null) {
                gc.fillPolygon(moved);
            }
            if (withLine) {
                gc.drawPolygon(moved);
            }
        };
    }

    private int[] pixels(Outline outline) {
        int[] pixels = new int[outline.xy().length];
        for (int k = 0; k < pixels.length; k += 2) {
            pixels[k] = (int) Math.round(outline.xy()[k] * view.pxPerMm());
            pixels[k + 1] = (int) Math.round(-outline.xy()[k + 1] * view.pxPerMm());
        }
        return pixels;
    }

    /** Puts one hit on the paper. */
    private interface Stamp {
        void at(int px, int py, double angle);
    }
}
