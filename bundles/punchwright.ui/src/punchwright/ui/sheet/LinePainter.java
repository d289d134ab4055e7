// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;

import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** Draws what a drawing shows beside the edges of its parts: lines by kind, texts in their size, centre marks. */
final class LinePainter {

    /** Texts smaller than this are not drawn: nobody can read them. */
    private static final double LEAST_TEXT_PX = 5;
    private static final double USUAL_TEXT_MM = 3.5;
    private static final int MOST_NOTES = 600;
    private static final int CENTRE_ARM_PX = 6;
    private static final double LEAST_LINE_PX = 0.5;

    private final GC gc;
    private final Viewport view;
    private final Rectangle window;

    LinePainter(GC gc, Viewport view, Rectangle window) {
        this.gc = gc;
        this.view = view;
        this.window = window;
    }

    void draw(DrawnLines lines) {
        for (LineKind kind : new LineKind[] { LineKind.HIDDEN, LineKind.IGNORE, LineKind.FILLED, LineKind.LOOSE, LineKind.MARK,
            LineKind.BEND_LINE, LineKind.FORM_UP, LineKind.FORM_DOWN, LineKind.OPEN }) {
            lines.strokes().stream().filter(s -> s.kind() == kind && isSeen(s.box())).forEach(this::stroke);
        }
        lines.centres().forEach(this::centre);
        lines.notes().stream().filter(this::isSeen).limit(MOST_NOTES).forEach(this::note);
    }

    private void stroke(DrawnLines.Stroke stroke) {
        stroke.kind().draw(gc, pixels(view, stroke.line()), stroke.closed());
    }

    static int[] pixels(Viewport view, Outline line) {
        return view.pixels(line);
    }

    private boolean isSeen(double[] box) {
        boolean large = Math.max(box[2] - box[0], box[3] - box[1]) * view.pxPerMm() >= LEAST_LINE_PX;
        return large && view.px(box[2]) >= window.x && view.px(box[0]) <= window.x + window.width && view.py(box[1]) >= window.y
                && view.py(box[3]) <= window.y + window.height;
    }

    private void centre(DrawnLines.Centre centre) {
        int x = view.px(centre.x());
        int y = view.py(centre.y());
        if (window.contains(x, y)) {
            Pen.thin(gc, Ink.PENCIL);
            gc.drawLine(x - CENTRE_ARM_PX, y, x + CENTRE_ARM_PX, y);
            gc.drawLine(x, y - CENTRE_ARM_PX, x, y + CENTRE_ARM_PX);
        }
    }

    private static double height(DrawnLines.Note note) {
        return note.heightMm() > 0 ? note.heightMm() : USUAL_TEXT_MM;
    }

    private boolean isSeen(DrawnLines.Note note) {
        return height(note) * view.pxPerMm() >= LEAST_TEXT_PX && window.contains(view.px(note.x()), view.py(note.y()));
    }

    private void note(DrawnLines.Note note) {
        gc.setForeground(Inks.of(Ink.PENCIL));
        Point size = gc.textExtent(note.text(), SWT.DRAW_DELIMITER);
        float capitals = gc.getFontMetrics().getAscent() * 0.72f;
        float scale = (float) (height(note) * view.pxPerMm() / capitals);
        Transform turned = new Transform(gc.getDevice());
        Transform before = new Transform(gc.getDevice());
        try {
            gc.getTransform(before);
            gc.getTransform(turned);
            turned.translate(view.px(note.x()), view.py(note.y()));
            turned.rotate((float) -note.angleDeg());
            turned.scale(scale, scale);
            gc.setTransform(turned);
            gc.drawText(note.text(), 0, -size.y + gc.getFontMetrics().getDescent(), SWT.DRAW_TRANSPARENT | SWT.DRAW_DELIMITER);
            gc.setTransform(before);
        } finally {
            turned.dispose();
            before.dispose();
        }
    }
}
