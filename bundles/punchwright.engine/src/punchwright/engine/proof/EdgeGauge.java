// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;

/**
 * Measures how far the made edge lies from the drawn one: at points along the drawn edge it looks straight across, both
 * ways, for where the strokes' area begins. Points that no stroke reaches (micro-joints, uncut edges) are left out.
 */
final class EdgeGauge {

    private static final double SPACING_MM = 1;
    private static final int MOST_POINTS = 2000;
    private static final double LOOK_MM = 1;

    private final Ring ring;
    private final List<Stroke> strokes;
    private final Spans spans = new Spans();

    EdgeGauge(Ring ring, List<Stroke> strokes) {
        this.ring = ring;
        this.strokes = strokes;
    }

    double worstMm() {
        Coordinate[] c = ring.form().polygon().getCoordinates();
        double spacing = Math.max(SPACING_MM, ring.form().polygon().getLength() / MOST_POINTS);
        double worst = 0;
        double next = spacing / 2;
        double gone = 0;
        for (int i = 1; i < c.length; i++) {
            double length = c[i].distance(c[i - 1]);
            for (; next < gone + length; next += spacing) {
                worst = Math.max(worst, deviation(c[i - 1], c[i], (next - gone) / length, length));
            }
            gone += length;
        }
        return worst;
    }

    private double deviation(Coordinate a, Coordinate b, double share, double length) {
        double x = a.x + share * (b.x - a.x) + ring.anchorX();
        double y = a.y + share * (b.y - a.y) + ring.anchorY();
        double nx = (b.y - a.y) / length * LOOK_MM;
        double ny = (a.x - b.x) / length * LOOK_MM;
        boolean outward = !ring.form().contains(x + nx * 1e-3 - ring.anchorX(), y + ny * 1e-3 - ring.anchorY());
        double sign = outward == ring.form().opening() ? -1 : 1;
        spans.clear();
        for (Stroke s : strokes) {
            if (s.box().intersects(new org.locationtech.jts.geom.Envelope(x - LOOK_MM, x + LOOK_MM, y - LOOK_MM, y + LOOK_MM))) {
                for (Region r : s.punch().regions()) {
                    r.clip(x - sign * nx - s.x(), y - sign * ny - s.y(), x + sign * nx - s.x(), y + sign * ny - s.y(), spans);
                }
            }
        }
        spans.merge(1e-6);
        for (int i = 0; i < spans.count(); i++) {
            if (spans.to(i) > 0.5) {
                return Math.abs(spans.from(i) - 0.5) * 2 * LOOK_MM;
            }
        }
        return 0;
    }
}
