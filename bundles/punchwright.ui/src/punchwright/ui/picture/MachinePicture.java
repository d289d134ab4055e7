// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.picture;


import java.util.Set;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.model.shop.Clamps;
import punchwright.model.shop.Machine;
import punchwright.ui.sheet.Pen;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/**
 * A machine: on the left what the axes reach, with the clamps on their carriage; on the right the places with the sizes they
 * take.
 */
final class MachinePicture {

    private static final int MARGIN = 40;

    private final Machine machine;

    MachinePicture(Machine machine) {
        this.machine = machine;
    }

    void draw(GC gc, Rectangle area) {
        if (machine.getTravelXMm() <= 0 || machine.getTravelYMm() <= 0) {
            return;
        }
        int half = area.width * 11 / 20;
        reach(gc, new Rectangle(area.x, area.y, half, area.height));
        new PlacesPicture(machine, Set.of()).draw(gc, new Rectangle(area.x + half, area.y, area.width - half, area.height));
    }

    private void reach(GC gc, Rectangle area) {
        double x = machine.getTravelXMm();
        double y = machine.getTravelYMm();
        Sketch sketch = new Sketch(gc, area, MARGIN, 0, -y * 0.12, x, y);
        gc.setBackground(Inks.of(Ink.SHEET));
        gc.fillRectangle(sketch.pixels(0, 0, x, y));
        Pen.thick(gc, Ink.GRAPHITE);
        sketch.box(0, 0, x, y);
        Pen.centre(gc, Ink.PENCIL);
        if (machine.getThroatDepthMm() > 0 && machine.getThroatDepthMm() < y) {
            sketch.line(0, machine.getThroatDepthMm(), x, machine.getThroatDepthMm());
        }
        if (machine.getClamps() != null) {
            clamps(gc, sketch, machine.getClamps());
        }
        int below = sketch.py(-y * 0.12) + 18;
        Pen.dimension(gc, sketch.px(0), below, sketch.px(x), below, "X " + Numbers.plain(x));
        int left = sketch.px(0) - 16;
        Pen.dimension(gc, left, sketch.py(0), left, sketch.py(y), "Y " + Numbers.plain(y));
        gc.setForeground(Inks.of(Ink.PENCIL));
        sketch.words(Texts.of("picture.reach", Numbers.plain(machine.getPressForceKn())), x / 2, y / 2);
    }

    /** The clamps evenly over their travel; where they stand in a plan, the plan says. */
    private void clamps(GC gc, Sketch sketch, Clamps clamps) {
        double from = clamps.getTravelMinXMm();
        double to = Math.min(clamps.getTravelMaxXMm(), machine.getTravelXMm());
        Pen.centre(gc, Ink.PENCIL);
        double rail = -machine.getTravelYMm() * 0.06;
        sketch.line(Math.max(0, from), rail, to, rail);
        int count = Math.max(1, clamps.getCount());
        for (int k = 0; k < count; k++) {
            double at = from + (to - from) * (k + 0.5) / count;
            double half = clamps.getWidthMm() / 2;
            Rectangle box = sketch.pixels(at - half, rail, at + half, clamps.getDepthMm());
            gc.setBackground(Inks.of(Ink.PAPER));
            gc.fillRectangle(box);
            Pen.thin(gc, Ink.PENCIL);
            Pen.hatch(gc, box.x, box.y, box.width, box.height, 5);
            Pen.thick(gc, Ink.GRAPHITE);
            gc.drawRectangle(box);
        }
    }
}
