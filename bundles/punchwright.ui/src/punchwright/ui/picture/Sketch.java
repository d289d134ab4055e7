// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.picture;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.ui.sheet.Outline;
import punchwright.ui.sheet.Viewport;

/** Millimetres on a piece of paper: what the small pictures share. */
final class Sketch {

    private final GC gc;
    private final Viewport view;

    /** Shows the box minX, minY, maxX, maxY inside an area with a margin. */
    Sketch(GC gc, Rectangle area, int margin, double... box) {
        this.gc = gc;
        Viewport fit = Viewport.fit(box[0], box[1], box[2], box[3], area.width, area.height, margin);
        view = fit.panned(area.x, area.y);
    }

    Viewport view() {
        return view;
    }

    int px(double x) {
        return view.px(x);
    }

    int py(double y) {
        return view.py(y);
    }

    void line(double x1, double y1, double x2, double y2) {
        gc.drawLine(px(x1), py(y1), px(x2), py(y2));
    }

    void box(double minX, double minY, double maxX, double maxY) {
        gc.drawRectangle(px(minX), py(maxY), px(maxX) - px(minX), py(minY) - py(maxY));
    }

    Rectangle pixels(double minX, double minY, double maxX, double maxY) {
        return new Rectangle(px(minX), py(maxY), px(maxX) - px(minX), py(minY) - py(maxY));
    }

    void circle(double x, double y, double diameter, boolean filled) {
        int d = view.length(diameter);
        if (filled) {
            gc.fillOval(px(x) - d / 2, py(y) - d / 2, d, d);
        }
        gc.drawOval(px(x) - d / 2, py(y) - d / 2, d, d);
    }

    void polygon(Outline outline, boolean filled) {
        int[] line = new int[outline.xy().length];
        for (int k = 0; k < line.length; k += 2) {
            line[k] = px(outline.xy()[k]);
            line[k + 1] = py(outline.xy()[k + 1]);
        }
        if (filled) {
            gc.fillPolygon(line);
        }
        gc.drawPolygon(line);
    }

    /** Words centred on a point. */
    void words(String text, double x, double y) {
        org.eclipse.swt.graphics.Point size = gc.textExtent(text);
        gc.drawText(text, px(x) - size.x / 2, py(y) - size.y / 2, true);
    }
}
