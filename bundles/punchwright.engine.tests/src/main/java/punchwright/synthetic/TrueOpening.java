// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.List;

import punchwright.engine.feature.FeatureKind;
import punchwright.engine.geometry.Point;

/**
 * An opening as it was meant, sizes in mm as in {@link punchwright.engine.feature.Feature}; for a free one its centre and the
 * extent along x and y of the part.
 *
 * @param exact the edges without noise, counter-clockwise
 */
public record TrueOpening(FeatureKind kind, Point center, double angleDeg, double lengthMm, double widthMm, double radiusMm,
        List<Curve> exact) {

    double areaMm2() {
        return exact.stream().mapToDouble(Curve::doubleArea).sum() / 2;
    }

    double edgeLengthMm() {
        return exact.stream().mapToDouble(Curve::lengthMm).sum();
    }

    TrueOpening moved(Place place) {
        List<Curve> moved = place.of(exact);
        TrueOpening there = new TrueOpening(kind, place.of(center), place.of(angleDeg), lengthMm, widthMm, radiusMm, moved);
        return kind == FeatureKind.FREE_OPENING ? there.withExtent() : there;
    }

    private TrueOpening withExtent() {
        double[] b = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Curve c : exact) {
            for (int i = 0; i <= 1000; i++) {
                Point p = c.pointAt(i / 1000.0);
                b[0] = Math.min(b[0], p.x());
                b[1] = Math.min(b[1], p.y());
                b[2] = Math.max(b[2], p.x());
                b[3] = Math.max(b[3], p.y());
            }
        }
        return new TrueOpening(kind, new Point((b[0] + b[2]) / 2, (b[1] + b[3]) / 2), 0, b[2] - b[0], b[3] - b[1], 0, exact);
    }
}
