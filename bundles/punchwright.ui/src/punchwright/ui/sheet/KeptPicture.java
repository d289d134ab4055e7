// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** The last full drawing of a scene as an image; while the view moves, the image is moved in its place. */
final class KeptPicture {

    private Image kept;
    private Viewport keptView;
    private long drawMs;
    private boolean stale = true;

    /** The next paint draws anew. */
    void spoil() {
        stale = true;
    }

    /** Milliseconds that the last full drawing took. */
    long drawMs() {
        return drawMs;
    }

    void paint(GC gc, Rectangle window, Scene scene, Viewport view, Shown shown, Font font) {
        if (stale || kept == null || !kept.getBounds().equals(window)) {
            draw(gc, window, scene, view, shown, font);
        }
        if (keptView.equals(view)) {
            gc.drawImage(kept, 0, 0);
        } else {
            moved(gc, window, view);
        }
    }

    private void draw(GC on, Rectangle window, Scene scene, Viewport view, Shown shown, Font font) {
        forget();
        long start = System.nanoTime();
        kept = new Image(on.getDevice(), window.width, window.height);
        GC gc = new GC(kept);
        try {
            gc.setFont(font);
            new ScenePainter(scene, view, window, shown).draw(gc);
        } finally {
            gc.dispose();
        }
        keptView = view;
        stale = false;
        drawMs = (System.nanoTime() - start) / 1_000_000;
    }

    private void moved(GC gc, Rectangle window, Viewport view) {
        gc.setBackground(Inks.of(Ink.PAPER));
        gc.fillRectangle(window);
        double factor = view.pxPerMm() / keptView.pxPerMm();
        int x = view.px(keptView.left());
        int y = view.py(keptView.top());
        gc.setInterpolation(SWT.LOW);
        gc.drawImage(kept, 0, 0, window.width, window.height, x, y, Math.max(1, (int) Math.round(window.width * factor)),
                Math.max(1, (int) Math.round(window.height * factor)));
    }

    void forget() {
        if (kept != null) {
            kept.dispose();
            kept = null;
        }
    }
}
