// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.ui.text.Numbers;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/**
 * Draws a scene as an engineering drawing: sheet and part edges thick, dimensions, leaders and hatching thin, limits of reach as
 * long-dash-dot lines (ISO 128), references as numbered balloons (ISO 6433).
 */
public final class ScenePainter {

    private static final int HATCH_PX = 6;
    private static final int DIMENSION_GAP_PX = 34;

    private final Scene scene;
    private final Viewport view;
    private final Rectangle window;
    private final Shown shown;

    /** A painter for one state of the window. */
    public ScenePainter(Scene scene, Viewport view, Rectangle window, Shown shown) {
        this.scene = scene;
        this.view = view;
        this.window = window;
        this.shown = shown;
    }

    /** Draws everything but what is selected. */
    public void draw(GC gc) {
        gc.setAntialias(scene.hitCount() > 4000 ? SWT.OFF : SWT.ON);
        gc.setTextAntialias(SWT.ON);
        gc.setBackground(Inks.of(Ink.PAPER));
        gc.fillRectangle(window);
        sheet(gc);
        scene.parts().forEach(piece -> part(gc, piece));
        HitPainter hits = new HitPainter(gc, view, window, shown);
        scene.groups().forEach(hits::draw);
        gc.setAntialias(SWT.ON);
        scene.parts().forEach(piece -> label(gc, piece));
        new LinePainter(gc, view, window).draw(scene.lines());
        scene.joints().forEach(joint -> joint(gc, joint));
        holds().forEach(hold -> clamps(gc, hold));
        dimensions(gc);
        scene.marks().forEach(mark -> mark(gc, mark));
        MarkSigns.place(scene, view).forEach(sign -> Signs.numbered(gc, sign));
        if (shown.balloons()) {
            balloons(gc);
        }
    }

    private List<Scene.Hold> holds() {
        return shown.holding() < 0 ? scene.holdings()
                : scene.holdings().stream().filter(h -> h.index() == shown.holding()).toList();
    }

    private void sheet(GC gc) {
        if (scene.lengthMm() <= 0) {
            return;
        }
        int x = view.px(0);
        int y = view.py(scene.widthMm());
        int w = view.px(scene.lengthMm()) - x;
        int h = view.py(0) - y;
        gc.setBackground(Inks.of(Ink.SHEET));
        gc.fillRectangle(x, y, w, h);
        Pen.thick(gc, Ink.GRAPHITE);
        gc.drawRectangle(x, y, w, h);
    }

    private void part(GC gc, Scene.Piece piece) {
        if (!inSight(piece.box()) || piece.contours().isEmpty()) {
            return;
        }
        int[] outer = pixels(piece.contours().get(0));
        gc.setBackground(Inks.of(Ink.PART));
        gc.fillPolygon(outer);
        boolean fine = (piece.box()[2] - piece.box()[0]) * view.pxPerMm() > 12;
        if (fine) {
            gc.setBackground(Inks.of(scene.lengthMm() > 0 ? Ink.SHEET : Ink.PAPER));
            for (int k = 1; k < piece.contours().size(); k++) {
                hole(gc, piece.contours().get(k));
            }
        }
        Pen.thick(gc, Ink.GRAPHITE);
        gc.setLineWidth(scene.parts().size() > 40 || !fine ? 1 : 2);
        gc.drawPolygon(outer);
    }

    private void hole(GC gc, Outline contour) {
        double[] box = contour.bounds();
        if (!inSight(box) || (box[2] - box[0]) * view.pxPerMm() < 1.5) {
            return;
        }
        int[] line = pixels(contour);
        gc.fillPolygon(line);
        Pen.thin(gc, Ink.GRAPHITE);
        gc.drawPolygon(line);
    }

    private void label(GC gc, Scene.Piece piece) {
        if (scene.lengthMm() <= 0 && scene.parts().size() < 2 || !inSight(piece.box())) {
            return;
        }
        Point size = gc.textExtent(piece.label());
        double[] box = piece.box();
        if (size.x + 8 > (box[2] - box[0]) * view.pxPerMm() || size.y + 8 > (box[3] - box[1]) * view.pxPerMm()) {
            return;
        }
        int x = view.px(piece.labelX()) - size.x / 2;
        int y = view.py(piece.labelY()) - size.y / 2;
        gc.setBackground(Inks.of(Ink.PART));
        gc.fillRectangle(x - 3, y, size.x + 6, size.y);
        gc.setForeground(Inks.of(Ink.PENCIL));
        gc.drawText(piece.label(), x, y, true);
    }

    private void joint(GC gc, Scene.Joint joint) {
        int r = Math.max(view.pxPerMm() < 0.6 ? 0 : 2, view.length(joint.widthMm()) / 2 + 1);
        Pen.thin(gc, Ink.ACCENT);
        int x = view.px(joint.x());
        int y = view.py(joint.y());
        gc.drawLine(x - r - 2, y - r - 2, x + r + 2, y + r + 2);
        gc.drawLine(x - r - 2, y + r + 2, x + r + 2, y - r - 2);
    }

    private void clamps(GC gc, Scene.Hold hold) {
        for (double[] c : hold.clamps()) {
            double zone = hold.deadZoneMm();
            Pen.dashed(gc, Ink.PENCIL);
            box(gc, c[0] - zone, hold.turned() ? c[1] - zone : c[1], c[2] + zone, hold.turned() ? c[3] : c[3] + zone, false);
            Pen.thin(gc, Ink.PENCIL);
            box(gc, c[0], c[1], c[2], c[3], true);
            Pen.thick(gc, Ink.GRAPHITE);
            box(gc, c[0], c[1], c[2], c[3], false);
        }
        Pen.centre(gc, Ink.ACCENT);
        if (shown.holding() >= 0 || scene.holdings().size() == 1) {
            reach(gc, hold.reachMinX());
            reach(gc, hold.reachMaxX());
        }
    }

    private void reach(GC gc, double x) {
        if (x > 0.5 && x < scene.lengthMm() - 0.5) {
            gc.drawLine(view.px(x), view.py(scene.widthMm()) - 12, view.px(x), view.py(0) + 12);
        }
    }

    private void box(GC gc, double minX, double minY, double maxX, double maxY, boolean hatched) {
        int x = view.px(minX);
        int y = view.py(maxY);
        int w = view.px(maxX) - x;
        int h = view.py(minY) - y;
        if (hatched) {
            gc.setBackground(Inks.of(Ink.PAPER));
            gc.fillRectangle(x, y, w, h);
            Pen.hatch(gc, x, y, w, h, HATCH_PX);
        } else {
            gc.drawRectangle(x, y, w, h);
        }
    }

    private void dimensions(GC gc) {
        double[] box = scene.lengthMm() > 0 ? new double[] { 0, 0, scene.lengthMm(), scene.widthMm() } : scene.box();
        if (box[2] - box[0] <= 0) {
            return;
        }
        int below = view.py(scene.box()[1]) + DIMENSION_GAP_PX;
        int left = view.px(box[0]) - DIMENSION_GAP_PX;
        Pen.thin(gc, Ink.PENCIL);
        gc.drawLine(view.px(box[0]), view.py(box[1]) + 4, view.px(box[0]), below + 4);
        gc.drawLine(view.px(box[2]), view.py(box[1]) + 4, view.px(box[2]), below + 4);
        gc.drawLine(view.px(box[0]) - 4, view.py(box[1]), left - 4, view.py(box[1]));
        gc.drawLine(view.px(box[0]) - 4, view.py(box[3]), left - 4, view.py(box[3]));
        Pen.dimension(gc, view.px(box[0]), below, view.px(box[2]), below, Numbers.plain(round(box[2] - box[0])));
        Pen.dimension(gc, left, view.py(box[1]), left, view.py(box[3]), Numbers.plain(round(box[3] - box[1])));
    }

    private static double round(double mm) {
        return Math.round(mm * 100) / 100.0;
    }

    private void mark(GC gc, Scene.Mark mark) {
        if (mark.number() == 0) {
            Signs.draw(gc, mark.rank(), view.px(mark.x()), view.py(mark.y()), 18);
        }
    }

    private void balloons(GC gc) {
        for (Balloons.Balloon b : Balloons.place(scene, view, window, shown)) {
            int x = view.px(b.group().x(b.hit()));
            int y = view.py(b.group().y(b.hit()));
            double angle = Math.atan2(y - b.py(), x - b.px());
            int r = Balloons.SIZE_PX / 2;
            Pen.thin(gc, Ink.PENCIL);
            gc.drawLine((int) (b.px() + r * Math.cos(angle)), (int) (b.py() + r * Math.sin(angle)), x, y);
            gc.setBackground(Inks.of(Ink.GRAPHITE));
            gc.fillOval(x - 2, y - 2, 5, 5);
            balloon(gc, b.balloon(), b.px(), b.py(), Balloons.SIZE_PX);
        }
    }

    /** A balloon: the number is the identity, the ring in the tool's colour helps. */
    public static void balloon(GC gc, int number, int px, int py, int size) {
        int r = size / 2;
        gc.setBackground(Inks.of(Ink.PAPER));
        gc.fillOval(px - r, py - r, 2 * r, 2 * r);
        gc.setForeground(Inks.mixed(Ink.tool(number), Ink.GRAPHITE, 0.75));
        gc.setLineWidth(2);
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.drawOval(px - r, py - r, 2 * r, 2 * r);
        gc.setForeground(Inks.of(Ink.GRAPHITE));
        String text = Integer.toString(number);
        Point extent = gc.textExtent(text);
        gc.drawText(text, px - extent.x / 2, py - extent.y / 2, true);
    }

    private boolean inSight(double[] box) {
        return view.px(box[2]) >= window.x && view.px(box[0]) <= window.x + window.width && view.py(box[1]) >= window.y
                && view.py(box[3]) <= window.y + window.height;
    }

    private int[] pixels(Outline outline) {
        return LinePainter.pixels(view, outline);
    }
}
