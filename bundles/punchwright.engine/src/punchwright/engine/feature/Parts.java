// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Lines and arcs of a contour in their order, and averages over them. */
record Parts(List<Line> lines, List<Arc> arcs, String pattern) {

    /** The pattern has an L for a line, an A for an arc that bulges outwards, a V for one that is hollow. */
    static Parts of(Contour counterClockwise) {
        StringBuilder pattern = new StringBuilder();
        for (Segment s : counterClockwise.segments()) {
            pattern.append(s instanceof Arc arc ? arc.sweepRad() > 0 ? 'A' : 'V' : 'L');
        }
        return new Parts(counterClockwise.segments().stream().filter(Line.class::isInstance).map(Line.class::cast).toList(),
                counterClockwise.segments().stream().filter(Arc.class::isInstance).map(Arc.class::cast).toList(),
                pattern.toString());
    }

    /** Whether the pattern, turned round, is this one. */
    boolean isTurnOf(String other) {
        return pattern.length() == other.length() && (other + other).contains(pattern);
    }

    double meanRadiusMm() {
        double weight = 0;
        double sum = 0;
        for (Arc arc : arcs) {
            weight += Math.abs(arc.sweepRad());
            sum += arc.radiusMm() * Math.abs(arc.sweepRad());
        }
        return sum / weight;
    }

    /** Centre of the arcs, weighted by their sweep. */
    Point meanCenter() {
        double weight = 0;
        Point sum = Point.ORIGIN;
        for (Arc arc : arcs) {
            weight += Math.abs(arc.sweepRad());
            sum = sum.plus(arc.center().times(Math.abs(arc.sweepRad())));
        }
        return sum.times(1 / weight);
    }

    static Point middle(Line line) {
        return line.pointAt(0.5);
    }

    /**
     * Direction in radians that fits the lines best when each may be turned by multiples of {@code periodRad}; long lines
     * count more. Between 0 and the period.
     */
    static double commonDirectionRad(List<Line> lines, double periodRad) {
        double x = 0;
        double y = 0;
        double factor = 2 * Math.PI / periodRad;
        for (Line line : lines) {
            double angle = line.end().minus(line.start()).angleRad() * factor;
            double weight = line.lengthMm() * line.lengthMm();
            x += weight * Math.cos(angle);
            y += weight * Math.sin(angle);
        }
        double mean = Math.atan2(y, x) / factor;
        return mean < 0 ? mean + periodRad : mean;
    }
}
