// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.locationtech.jts.geom.Geometry;

import punchwright.engine.feature.Feature;
import punchwright.engine.geometry.Angles;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;

/**
 * Whether one hit of a tool makes an opening: the punch contour is laid centroid on centroid at every angle worth trying and
 * must lie within half the size tolerance of the opening's contour all round. Size and area rule most tools out first.
 */
final class ExactHit {

    private final double toleranceMm;

    ExactHit(ToolingRules rules) {
        toleranceMm = rules.sizeToleranceMm() / 2 + 1e-6;
    }

    /** The hit, when the tool can be set to its angle ({@code turning}: in a seat that turns). */
    Optional<PartHit> find(Feature feature, Tool tool, boolean turning) {
        for (double needed : angles(feature, tool)) {
            OptionalDouble angle = AngleFit.angleDeg(tool, turning, needed);
            if (angle.isPresent()) {
                Optional<PartHit> hit = at(feature, tool, angle.getAsDouble());
                if (hit.isPresent()) {
                    return hit;
                }
            }
        }
        return Optional.empty();
    }

    /** Whether the tool would make it if only its angle could be set. */
    boolean matches(Feature feature, Tool tool) {
        return angles(feature, tool).stream().anyMatch(a -> at(feature, tool, a).isPresent());
    }

    private Set<Double> angles(Feature feature, Tool tool) {
        Set<Double> angles = new LinkedHashSet<>();
        if (!feature.isOpening() || tool.shape().forms() || tool.shape() == ToolShape.CLUSTER || !sizeFits(feature, tool)) {
            return angles;
        }
        if (ToolFootprint.symmetryOrder(tool) == 0) {
            angles.add(0.0);
            return angles;
        }
        for (int i = 0; i < 12; i++) {
            angles.add(Angles.normalizeDeg(feature.angleDeg() + 30 * i));
        }
        if (tool.shape() == ToolShape.FREE_CONTOUR) {
            double own = directionDeg(longest(tool.freeContour().oriented(true)));
            feature.contour().oriented(true).segments().forEach(s -> angles.add(Angles.normalizeDeg(directionDeg(s) - own)));
        }
        return angles;
    }

    private boolean sizeFits(Feature feature, Tool tool) {
        double area = feature.contour().areaMm2();
        return Math.abs(area - ToolFootprint.areaMm2(tool)) <= toleranceMm * feature.contour().lengthMm() + 1e-6;
    }

    private static Segment longest(Contour contour) {
        return contour.segments().stream().max((a, b) -> Double.compare(a.lengthMm(), b.lengthMm())).orElseThrow();
    }

    private static double directionDeg(Segment s) {
        return Math.toDegrees(s.end().minus(s.start()).angleRad());
    }

    private Optional<PartHit> at(Feature feature, Tool tool, double angleDeg) {
        Contour punch = ToolFootprint.of(tool).getFirst().moved(Pose.at(0, 0, angleDeg));
        Point shift = centroid(feature.contour()).minus(centroid(punch));
        Contour laid = punch.moved(Pose.at(shift.x(), shift.y(), 0));
        boolean same = near(laid, feature.contour()) && near(feature.contour(), laid);
        return same ? Optional.of(new PartHit(shift, angleDeg, HitRole.PIERCE)) : Optional.empty();
    }

    private boolean near(Contour a, Contour b) {
        for (Segment s : a.segments()) {
            for (int i = 0; i < 8; i++) {
                if (b.distance(s.pointAt(i / 8.0)) > toleranceMm) {
                    return false;
                }
            }
        }
        return true;
    }

    private static Point centroid(Contour contour) {
        Geometry area = Areas.of(contour);
        return new Point(area.getCentroid().getX(), area.getCentroid().getY());
    }
}
