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
public final class HolderPicture {

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
        double ring = ringMm(holder);
        Pen.centre(gc, Ink.PENCIL);
        sketch.circle(0, 0, 2 * ring, false);
        for (int k = 0; k < holder.getInsertCount(); k++) {
            double[] at = insertAt(holder, k);
            gc.setBackground(Inks.of(Ink.PAPER));
            Pen.thick(gc, holder.isInsertsTurn() ? Ink.ACCENT : Ink.GRAPHITE);
            sketch.circle(at[0], at[1], insert, true);
            gc.setForeground(Inks.of(Ink.GRAPHITE));
            sketch.words(Integer.toString(k + 1), at[0], at[1]);
        }
        int below = sketch.py(-outer / 2) + 24;
        Pen.dimension(gc, sketch.px(-outer / 2), below, sketch.px(outer / 2), below, "\u2300 " + Numbers.plain(outer));
    }

    /** Radius of the ring on which the inserts stand, mm. */
    private static double ringMm(MultiToolHolder holder) {
        return holder.getOuterDiameterMm() / 2 - holder.getLargestInsertDiameterMm() * 0.75;
    }

    /** Where insert {@code k}, from 0, stands about the holder's axis: x and y in mm. */
    public static double[] insertAt(MultiToolHolder holder, int k) {
        double a = Math.PI / 2 - 2 * Math.PI * k / holder.getInsertCount();
        return new double[] { ringMm(holder) * Math.cos(a), ringMm(holder) * Math.sin(a) };
    }
}
