// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.picture;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.model.shop.MultiToolHolder;
import punchwright.ui.sheet.Pen;
import punchwright.ui.text.Numbers;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** A holder from below: its inserts on a ring, to scale. */
final class HolderPicture {

    private HolderPicture() {
    }

    static void draw(GC gc, Rectangle area, MultiToolHolder holder) {
        double outer = holder.getOuterDiameterMm();
        if (outer <= 0 || holder.getInsertCount() < 1) {
            return;
        }
        Sketch sketch = new Sketch(gc, area, 40, -outer / 2, -outer / 2, outer / 2, outer / 2);
        gc.setBackground(Inks.of(Ink.SHEET));
        Pen.thick(gc, Ink.GRAPHITE);
        sketch.circle(0, 0, outer, true);
        double insert = holder.getLargestInsertDiameterMm();
        double ring = outer / 2 - insert * 0.75;
        Pen.centre(gc, Ink.PENCIL);
        sketch.circle(0, 0, 2 * ring, false);
        for (int k = 0; k < holder.getInsertCount(); k++) {
            double a = Math.PI / 2 - 2 * Math.PI * k / holder.getInsertCount();
            gc.setBackground(Inks.of(Ink.PAPER));
            Pen.thick(gc, holder.isInsertsTurn() ? Ink.ACCENT : Ink.GRAPHITE);
            sketch.circle(ring * Math.cos(a), ring * Math.sin(a), insert, true);
            gc.setForeground(Inks.of(Ink.GRAPHITE));
            sketch.words(Integer.toString(k + 1), ring * Math.cos(a), ring * Math.sin(a));
        }
        int below = sketch.py(-outer / 2) + 24;
        Pen.dimension(gc, sketch.px(-outer / 2), below, sketch.px(outer / 2), below, "\u2300 " + Numbers.plain(outer));
    }
}
