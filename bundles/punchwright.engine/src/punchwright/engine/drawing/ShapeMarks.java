// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Angles;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/**
 * Measures of a shape that move with it and do not depend on how it was drawn: centroids of its holes, and the points of the
 * outline farthest from its centroid. They propose a motion onto another shape; it counts when the edges then lie on the
 * other's.
 */
final class ShapeMarks {

    private static final double FLATTENING_MM = 0.002;
    /** Marks and edges of equal parts lie this many tolerances apart at most. */
    private static final double SLACK = 4;

    /** A point with the area of what it stands for, mm2; 0 for a point of the outline. */
    private record Mark(Point at, double areaMm2, double lengthMm) {
    }

    private final Shape shape;
    private final double areaMm2;
    private final double lengthMm;
    private final Point center;
    private final List<Mark> holes = new ArrayList<>();
    private final double toleranceMm;
    private List<Mark> farthest;
    private List<Segment> segments;
    private BoxIndex index;

    ShapeMarks(Shape shape, double toleranceMm) {
        this.shape = shape;
        this.toleranceMm = toleranceMm;
        areaMm2 = shape.areaMm2();
        lengthMm = shape.cutLengthMm();
        Mark outer = mark(shape.outer());
        Point moment = outer.at().times(outer.areaMm2());
        double area = outer.areaMm2();
        for (Contour hole : shape.holes()) {
            Mark m = mark(hole);
            holes.add(m);
            moment = moment.minus(m.at().times(m.areaMm2()));
            area -= m.areaMm2();
        }
        center = moment.times(1 / area);
    }

    /** Centroid and area of the polygon of a contour, from its first point so that far-off contours stay exact. */
    private static Mark mark(Contour contour) {
        List<Point> points = Flattening.points(contour, FLATTENING_MM);
        Point o = points.get(0);
        Point sum = Point.ORIGIN;
        double twice = 0;
        for (int i = 1; i + 1 < points.size(); i++) {
            Point a = points.get(i).minus(o);
            Point b = points.get(i + 1).minus(o);
            double cross = a.cross(b);
            twice += cross;
            sum = sum.plus(a.plus(b).times(cross));
        }
        Point centroid = twice == 0 ? o : o.plus(sum.times(1 / (3 * twice)));
        return new Mark(centroid, Math.abs(twice) / 2, contour.lengthMm());
    }

    /** Marks of the shape mirrored about its y axis. */
    ShapeMarks mirrored() {
        return new ShapeMarks(shape.moved(new Pose(0, 0, 0, true)), toleranceMm);
    }

    boolean mayEqual(ShapeMarks other) {
        double slack = SLACK * toleranceMm;
        return holes.size() == other.holes.size() && Math.abs(areaMm2 - other.areaMm2) <= slack / 2 * Math.max(lengthMm,
                other.lengthMm)
                && Math.abs(lengthMm - other.lengthMm) <= 1e-3 * lengthMm + slack;
    }

    /** The turn and shift that bring this shape onto the other; null when there is none. */
    Pose motionTo(ShapeMarks other) {
        Mark reference = reference();
        if (reference == null) {
            Pose shift = motion(0, other);
            return fits(shift, other) ? shift : null;
        }
        Point arm = reference.at().minus(center);
        for (Mark candidate : reference.areaMm2() > 0 ? other.holes : other.farthest()) {
            Point otherArm = candidate.at().minus(other.center);
            if (isLike(reference, candidate) && Math.abs(arm.norm() - otherArm.norm()) <= SLACK * toleranceMm) {
                Pose pose = motion(Math.toDegrees(otherArm.angleRad() - arm.angleRad()), other);
                if (fits(pose, other)) {
                    return pose;
                }
            }
        }
        return null;
    }

    private boolean isLike(Mark a, Mark b) {
        return Math.abs(a.areaMm2() - b.areaMm2()) <= SLACK * toleranceMm * Math.max(a.lengthMm(), b.lengthMm());
    }

    private Pose motion(double angleDeg, ShapeMarks other) {
        double round = Math.abs(angleDeg - Math.rint(angleDeg)) < 1e-6 ? Math.rint(angleDeg) : angleDeg;
        Point turned = Pose.at(0, 0, round).apply(center);
        return Pose.at(other.center.x() - turned.x(), other.center.y() - turned.y(), Angles.normalizeDeg(round));
    }

    /** The hole farthest from the centroid, else a farthest point of the outline; null for a disc. */
    private Mark reference() {
        Mark best = null;
        for (Mark m : holes) {
            if (m.at().distance(center) > 10 * toleranceMm
                    && (best == null || m.at().distance(center) > best.at().distance(center) + toleranceMm)) {
                best = m;
            }
        }
        return best != null ? best : farthest().stream().findFirst().orElse(null);
    }

    /** Points of the outline as far from the centroid as any; none for a disc about it. */
    private List<Mark> farthest() {
        if (farthest == null) {
            List<Point> points = new ArrayList<>();
            double least = Double.POSITIVE_INFINITY;
            double most = 0;
            for (Segment s : shape.outer().segments()) {
                points.add(s.start());
                if (s instanceof Arc arc && arc.center().distance(center) > toleranceMm
                        && arc.spans(arc.center().minus(center).angleRad())) {
                    points.add(arc.center().plus(arc.center().minus(center).unit().times(arc.radiusMm())));
                }
                least = Math.min(least, s.pointAt(0.5).distance(center));
            }
            for (Point p : points) {
                most = Math.max(most, p.distance(center));
            }
            double limit = most - toleranceMm;
            boolean disc = most - least <= SLACK * toleranceMm;
            farthest = disc ? List.of() : points.stream().filter(p -> p.distance(center) >= limit)
                    .map(p -> new Mark(p, 0, 0)).toList();
        }
        return farthest;
    }

    /** Whether the edges of each, moved, lie on those of the other. */
    private boolean fits(Pose pose, ShapeMarks other) {
        Point back = Pose.at(0, 0, -pose.angleDeg()).apply(new Point(-pose.x(), -pose.y()));
        return liesOn(pose, other) && other.liesOn(Pose.at(back.x(), back.y(), Angles.normalizeDeg(-pose.angleDeg())), this);
    }

    private boolean liesOn(Pose pose, ShapeMarks other) {
        prepare();
        other.prepare();
        return segments.stream().allMatch(s -> other.isNear(pose.apply(s.pointAt(0.5))) && other.isNear(pose.apply(s.start())));
    }

    private void prepare() {
        if (index == null) {
            segments = new ArrayList<>(shape.outer().segments());
            shape.holes().forEach(h -> segments.addAll(h.segments()));
            index = new BoxIndex(segments.stream().map(Segment::bounds).toList());
        }
    }

    private boolean isNear(Point p) {
        boolean[] near = {false};
        double slack = SLACK * toleranceMm;
        index.query(Bounds.EMPTY.including(p).grown(slack), j -> near[0] = near[0] || segments.get(j).distance(p) <= slack);
        return near[0];
    }
}
