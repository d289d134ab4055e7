// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.picture;

import java.util.List;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.model.shop.Clamps;
import punchwright.model.shop.HeadKind;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Place;
import punchwright.ui.sheet.Pen;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/** A machine: on the left what the axes reach, with the clamps on their carriage; on the right the places with the sizes they take. */
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
        places(gc, new Rectangle(area.x + half, area.y, area.width - half, area.height));
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

    private void places(GC gc, Rectangle area) {
        List<Place> places = machine.getPlaces();
        if (places.isEmpty()) {
            return;
        }
        if (machine.getHeadKind() == HeadKind.TURRET) {
            ring(gc, area, places);
        } else {
            rack(gc, area, places);
        }
    }

    /** A carrier seen from above: the places round it, to scale among each other. */
    private static void ring(GC gc, Rectangle area, List<Place> places) {
        double around = places.stream().mapToDouble(p -> Math.max(p.getMaxToolDiameterMm(), 12) * 1.25).sum();
        double radius = around / (2 * Math.PI);
        double edge = radius + places.stream().mapToDouble(Place::getMaxToolDiameterMm).max().orElse(0) * 0.65;
        Sketch sketch = new Sketch(gc, area, 12, -edge, -edge, edge, edge);
        Pen.thin(gc, Ink.PENCIL);
        sketch.circle(0, 0, 2 * edge, false);
        double at = 0;
        for (Place place : places) {
            double own = Math.max(place.getMaxToolDiameterMm(), 12) * 1.25 / around * 2 * Math.PI;
            double a = Math.PI / 2 - at - own / 2;
            place(gc, sketch, place, radius * Math.cos(a), radius * Math.sin(a));
            at += own;
        }
    }

    /** A magazine: the places in rows. */
    private static void rack(GC gc, Rectangle area, List<Place> places) {
        double pitch = places.stream().mapToDouble(Place::getMaxToolDiameterMm).max().orElse(50) * 1.2 + 4;
        int columns = Math.max(1, (int) Math.ceil(Math.sqrt(places.size() * (double) area.width / Math.max(1, area.height))));
        int rows = (places.size() + columns - 1) / columns;
        Sketch sketch = new Sketch(gc, area, 10, -pitch / 2, -pitch * (rows - 0.5), pitch * (columns - 0.5), pitch / 2);
        for (int k = 0; k < places.size(); k++) {
            place(gc, sketch, places.get(k), pitch * (k % columns), -pitch * (k / columns));
        }
    }

    private static void place(GC gc, Sketch sketch, Place place, double x, double y) {
        gc.setBackground(Inks.of(Ink.PART));
        Pen.thick(gc, place.isTurns() ? Ink.ACCENT : Ink.GRAPHITE);
        sketch.circle(x, y, Math.max(place.getMaxToolDiameterMm(), 8), true);
        String name = place.getName() == null || place.getName().length() > 4 ? Integer.toString(place.getIndexPosition()) : place.getName();
        if (gc.textExtent(name).x < sketch.view().length(Math.max(place.getMaxToolDiameterMm(), 8)) + 4) {
            gc.setForeground(Inks.of(Ink.GRAPHITE));
            sketch.words(name, x, y);
        }
    }
}
