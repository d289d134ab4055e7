// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.picture;

import java.util.List;
import java.util.Set;

import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

import punchwright.model.shop.HeadKind;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Place;
import punchwright.ui.sheet.Pen;
import punchwright.ui.theme.Ink;
import punchwright.ui.theme.Inks;

/**
 * The places of a machine seen from above: round the carrier of a turret, else in rows; those that are loaded have a second ring.
 */
public final class PlacesPicture {

    private final Machine machine;
    private final Set<Place> loaded;

    /** The places of a machine; {@code loaded} are those in which something stands. */
    public PlacesPicture(Machine machine, Set<Place> loaded) {
        this.machine = machine;
        this.loaded = loaded;
    }

    /** Draws them inside an area. */
    public void draw(GC gc, Rectangle area) {
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
    private void ring(GC gc, Rectangle area, List<Place> places) {
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
    private void rack(GC gc, Rectangle area, List<Place> places) {
        double pitch = places.stream().mapToDouble(Place::getMaxToolDiameterMm).max().orElse(50) * 1.2 + 4;
        int columns = Math.max(1, (int) Math.ceil(Math.sqrt(places.size() * (double) area.width / Math.max(1, area.height))));
        int rows = (places.size() + columns - 1) / columns;
        Sketch sketch = new Sketch(gc, area, 10, -pitch / 2, -pitch * (rows - 0.5), pitch * (columns - 0.5), pitch / 2);
        for (int k = 0; k < places.size(); k++) {
            place(gc, sketch, places.get(k), pitch * (k % columns), -pitch * (k / columns));
        }
    }

    private void place(GC gc, Sketch sketch, Place place, double x, double y) {
        boolean used = loaded.contains(place);
        gc.setBackground(used ? Inks.mixed(Ink.ACCENT, Ink.PAPER, 0.3) : Inks.of(Ink.PART));
        Pen.thick(gc, place.isTurns() ? Ink.ACCENT : Ink.GRAPHITE);
        sketch.circle(x, y, Math.max(place.getMaxToolDiameterMm(), 8), true);
        if (used) {
            Pen.thin(gc, Ink.GRAPHITE);
            sketch.circle(x, y, Math.max(place.getMaxToolDiameterMm(), 8) * 0.8, false);
        }
        String name = place.getName() == null || place.getName().length() > 4 ? Integer.toString(place.getIndexPosition())
                : place.getName();
        if (gc.textExtent(name).x < sketch.view().length(Math.max(place.getMaxToolDiameterMm(), 8)) + 4) {
            gc.setForeground(Inks.of(Ink.GRAPHITE));
            sketch.words(name, x, y);
        }
    }
}
