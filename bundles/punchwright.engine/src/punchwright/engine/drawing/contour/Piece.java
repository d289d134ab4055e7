// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.List;

import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * The segments of one entity in order, in mm.
 *
 * @param closed whether the entity says that it is closed
 * @param exact  whether the segments are as drawn, not approximations of a spline or ellipse
 */
public record Piece(List<Segment> segments, boolean closed, boolean exact) {

    public Point start() {
        return segments.get(0).start();
    }

    public Point end() {
        return segments.get(segments.size() - 1).end();
    }

    double lengthMm() {
        double sum = 0;
        for (Segment s : segments) {
            sum += s.lengthMm();
        }
        return sum;
    }

    /** The point half way along. */
    Point middle() {
        return along(lengthMm() / 2);
    }

    /** The point after this length from the start, in mm. */
    Point along(double lengthMm) {
        double left = lengthMm;
        for (Segment s : segments) {
            double length = s.lengthMm();
            if (length >= left && length > 0) {
                return s.pointAt(left / length);
            }
            left -= length;
        }
        return end();
    }

    List<Segment> directed(boolean forward) {
        if (segments.size() == 1) {
            return forward ? segments : List.of(segments.get(0).reversed());
        }
        return forward ? segments : segments.reversed().stream().map(Segment::reversed).toList();
    }
}
