// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;

import punchwright.ui.theme.Ink;

/** Draws what is selected over a scene, in the accent. */
final class SelectionPainter {

    private static final int RING_PX = 12;

    private final GC gc;
    private final Scene scene;
    private final Viewport view;

    SelectionPainter(GC gc, Scene scene, Viewport view) {
        this.gc = gc;
        this.scene = scene;
        this.view = view;
        gc.setAntialias(SWT.ON);
    }

    void lines(List<double[]> lines) {
        for (double[] line : lines) {
            int[] points = new int[line.length];
            for (int k = 0; k < line.length; k += 2) {
                points[k] = view.px(line[k]);
                points[k + 1] = view.py(line[k + 1]);
            }
            Pen.thick(gc, Ink.ACCENT);
            gc.setLineWidth(4);
            gc.drawPolyline(points);
        }
    }

    void piece(int number) {
        scene.parts().stream().filter(p -> p.number() == number && number > 0 && !p.contours().isEmpty()).forEach(p -> {
            Pen.thick(gc, Ink.ACCENT);
            gc.setLineWidth(3);
            gc.drawPolygon(LinePainter.pixels(view, p.contours().get(0)));
        });
    }

    void mark(int number) {
        scene.marks().stream().filter(m -> m.number() == number && number > 0).forEach(m -> {
            Pen.thick(gc, Ink.ACCENT);
            gc.setLineWidth(3);
            gc.drawOval(view.px(m.x()) - RING_PX, view.py(m.y()) - RING_PX, 2 * RING_PX, 2 * RING_PX);
        });
    }

    void hit(HitGroup group, int i) {
        Outline outline = group.outline().placed(group.angle(i), group.x(i), group.y(i));
        Pen.thick(gc, Ink.ACCENT);
        gc.setLineWidth(3);
        gc.drawPolygon(LinePainter.pixels(view, outline));
        int px = view.px(group.x(i));
        int py = view.py(group.y(i));
        int arm = Math.max(14, view.length(group.outline().radius()) + 8);
        Pen.centre(gc, Ink.ACCENT);
        gc.drawLine(px - arm, py, px + arm, py);
        gc.drawLine(px, py - arm, px, py + arm);
    }
}
