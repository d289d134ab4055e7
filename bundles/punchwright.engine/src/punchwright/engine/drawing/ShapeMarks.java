// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.ContourTidy;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/**
 * Points of a shape that move with it and do not depend on how it was drawn: the middle of each edge with its length and
 * radius, the centre of each circle.
 */
final class ShapeMarks {

    /** A point with the size of what it stands for; radius 0 for a line, minus for a hollow arc. */
    record Mark(Point at, double lengthMm, double radiusMm) {

        boolean isLike(Mark other, double toleranceMm) {
            return Math.abs(lengthMm - other.lengthMm) <= 4 * toleranceMm && Math.abs(radiusMm - other.radiusMm) <= 4 * toleranceMm;
        }
    }

    private final List<Mark> marks = new ArrayList<>();
    private final double areaMm2;
    private final Point center;
    private BoxIndex index;

    ShapeMarks(Shape shape, double toleranceMm) {
        areaMm2 = shape.areaMm2();
        add(ContourTidy.tidy(shape.outer(), toleranceMm));
        shape.holes().forEach(h -> add(ContourTidy.tidy(h, toleranceMm)));
        center = marks.stream().map(Mark::at).reduce(Point.ORIGIN, Point::plus).times(1.0 / marks.size());
    }

    private ShapeMarks(List<Mark> marks, double areaMm2, Point center) {
        this.marks.addAll(marks);
        this.areaMm2 = areaMm2;
        this.center = center;
    }

    private void add(Contour contour) {
        for (Segment s : contour.segments()) {
            double radius = s instanceof Arc arc ? Math.signum(arc.sweepRad()) * arc.radiusMm() : 0;
            boolean circle = s instanceof Arc arc && arc.isFullCircle();
            marks.add(new Mark(circle ? ((Arc) s).center() : s.pointAt(0.5), s.lengthMm(), radius));
        }
    }

    ShapeMarks mirrored() {
        Pose mirror = new Pose(0, 0, 0, true);
        return new ShapeMarks(marks.stream().map(m -> new Mark(mirror.apply(m.at()), m.lengthMm(), m.radiusMm())).toList(), areaMm2,
                mirror.apply(center));
    }

    boolean mayEqual(ShapeMarks other, double toleranceMm) {
        double edges = marks.stream().mapToDouble(Mark::lengthMm).sum();
        return marks.size() == other.marks.size() && Math.abs(areaMm2 - other.areaMm2) <= 2 * toleranceMm * edges;
    }

    /** The turn and shift that bring these marks onto the others; null when there is none. */
    Pose motionTo(ShapeMarks other, double toleranceMm) {
        Mark reference = reference(toleranceMm);
        if (reference == null) {
            Pose shift = motion(0, other);
            return fits(shift, other, toleranceMm) ? shift : null;
        }
        Point arm = reference.at().minus(center);
        for (Mark candidate : other.marks) {
            Point otherArm = candidate.at().minus(other.center);
            if (reference.isLike(candidate, toleranceMm) && Math.abs(arm.norm() - otherArm.norm()) <= 4 * toleranceMm) {
                Pose pose = motion(Math.toDegrees(otherArm.angleRad() - arm.angleRad()), other);
                if (fits(pose, other, toleranceMm)) {
                    return pose;
                }
            }
        }
        return null;
    }

    private Pose motion(double angleDeg, ShapeMarks other) {
        double round = Math.abs(angleDeg - Math.rint(angleDeg)) < 1e-6 ? Math.rint(angleDeg) : angleDeg;
        Point turned = Pose.at(0, 0, round).apply(center);
        return Pose.at(other.center.x() - turned.x(), other.center.y() - turned.y(), punchwright.engine.geometry.Angles.normalizeDeg(round));
    }

    /** The mark farthest from the centre; null when all lie in it, as for a plain disc. */
    private Mark reference(double toleranceMm) {
        Mark farthest = null;
        for (Mark m : marks) {
            if (m.at().distance(center) > 10 * toleranceMm
                    && (farthest == null || m.at().distance(center) > farthest.at().distance(center) + toleranceMm)) {
                farthest = m;
            }
        }
        return farthest;
    }

    private boolean fits(Pose pose, ShapeMarks other, double toleranceMm) {
        if (other.index == null) {
            other.index = new BoxIndex(other.marks.stream().map(m -> Bounds.EMPTY.including(m.at())).toList());
        }
        boolean[] used = new boolean[marks.size()];
        for (Mark m : marks) {
            int[] hit = {-1};
            other.index.query(Bounds.EMPTY.including(pose.apply(m.at())).grown(4 * toleranceMm), j -> {
                if (hit[0] < 0 && !used[j] && m.isLike(other.marks.get(j), toleranceMm)) {
                    hit[0] = j;
                }
            });
            if (hit[0] < 0) {
                return false;
            }
            used[hit[0]] = true;
        }
        return true;
    }
}
