// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Angles;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** The outer contour as straight edges and arc edges: each segment of the tidied contour once, in order. */
final class EdgeRecognition {

    private EdgeRecognition() {
    }

    /** The angle is the direction of travel in the middle, the material lying on the left. */
    static Feature edge(int number, Segment s) {
        Point middle = s.pointAt(0.5);
        double angle = Angles.normalizeDeg(Math.toDegrees(s.tangentAt(0.5).angleRad()));
        return s instanceof Arc arc
                ? new Feature(number, FeatureKind.ARC_EDGE, middle, angle, arc.lengthMm(), 0, arc.radiusMm(), null,
                List.of(s), "")
                : new Feature(number, FeatureKind.STRAIGHT_EDGE, middle, angle, s.lengthMm(), 0, 0, null, List.of(s), "");
    }
}
