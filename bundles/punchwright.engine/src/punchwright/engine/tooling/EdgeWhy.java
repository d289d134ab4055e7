// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;
import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Angles;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Which segment of an edge no tool can cut, and why: angle, small inside radius, acute corner, a short or a tight place. */
final class EdgeWhy {

    private static final double RIGHT_ANGLE_DEG = 90.5;
    private static final double NEAR_MM = 0.01;
    private static final double FAR_MM = 1000;

    private final ToolingJob job;
    private final List<UsableTool> tools;
    private final PartGuard guard;
    private final EdgeCutter cutter;

    EdgeWhy(ToolingJob job, List<UsableTool> tools) {
        this.job = job;
        this.tools = tools;
        guard = new PartGuard(job.features().shape());
        cutter = new EdgeCutter(job.rules());
    }

    /** The first segment without a harmless way; empty when each has one of its own. */
    Optional<Finding> reason(Feature feature, String subject) {
        EdgePath path = EdgePath.of(feature, job.features().shape());
        for (int i = 0; i < path.segments().size(); i++) {
            int index = i;
            if (tools.stream().noneMatch(t -> cuts(path, index, t))) {
                return Optional.of(reason(path, i, subject));
            }
        }
        return acute(path, subject);
    }

    private boolean cuts(EdgePath path, int index, UsableTool t) {
        return cutter.proposals(path, index, List.of(), t).stream()
                .anyMatch(p -> p.variants().stream().anyMatch(v -> guard.clear(t.footprint(), v)));
    }

    private Finding reason(EdgePath path, int i, String subject) {
        Segment s = path.segments().get(i);
        Point at = s.pointAt(0.5);
        if (tools.stream().anyMatch(t -> cuts(path, i, turning(t)))) {
            double angle = Math.toDegrees(s.tangentAt(0.5).angleRad());
            return Finding.at(at, ToolingReason.EDGE_ANGLE, subject, Angles.normalizeDeg(angle) % 180, at.x(), at.y());
        }
        if (s instanceof Arc arc && arc.sweepRad() < 0) {
            double smallest = tools.stream().filter(UsableTool::round).mapToDouble(t -> t.tool().lengthMm()).min().orElse(0);
            if (smallest == 0 || smallest / 2 > arc.radiusMm() + 0.006) {
                return Finding.at(at, ToolingReason.INSIDE_RADIUS, subject, arc.radiusMm(), 2 * arc.radiusMm(), smallest);
            }
        }
        Optional<Finding> acute = acute(path, subject);
        if (acute.isPresent()) {
            return acute.get();
        }
        double shortest = tools.stream().filter(UsableTool::rectangular)
                .mapToDouble(t -> Math.min(t.tool().lengthMm(), t.tool().widthMm())).min().orElse(0);
        boolean closedIn = path.startOf(i) == EdgePath.End.FLUSH && path.endOf(i) == EdgePath.End.FLUSH;
        if (closedIn && !(s instanceof Arc) && s.lengthMm() < shortest - 1e-6) {
            return Finding.at(at, ToolingReason.SHORT_EDGE, subject, s.lengthMm(), shortest);
        }
        double smallest = tools.stream().filter(t -> t.rectangular() || t.round())
                .mapToDouble(t -> Math.min(t.tool().lengthMm(), t.tool().widthMm())).min().orElse(0);
        return Finding.at(at, ToolingReason.TIGHT, subject, at.x(), at.y(), roomMm(s), smallest);
    }

    /** The tool as if it could be set to any angle. */
    private static UsableTool turning(UsableTool u) {
        Tool t = u.tool();
        Tool free = new Tool(t.id(), t.name(), t.shape(), t.lengthMm(), t.widthMm(), t.cornerRadiusMm(), AngleFreedom.ANY, 0,
                t.clearancesTotalMm(), t.shear(), t.shearHeightMm(), t.price(), t.grindsLeft(), t.grindCost(), t.hitsPerGrind(),
                t.hitsSinceGrind(), t.onHand(), t.formHeightMm(), t.cluster(), t.freeContour(), t.room());
        return new UsableTool(free, u.footprint(), u.forceN(), u.strippingN(), u.clearanceNeedMm(), u.clearanceMm(), true,
                u.wearPerHit(), u.hitsLeft(), u.warnings());
    }

    /** From the middle of the edge straight into the waste to where material begins again, mm. */
    private double roomMm(Segment s) {
        Point at = s.pointAt(0.5);
        Point into = s.tangentAt(0.5).left().times(-1);
        Point near = at.plus(into.times(NEAR_MM));
        Point far = at.plus(into.times(FAR_MM));
        Geometry ray = Areas.FACTORY.createLineString(new Coordinate[] { new Coordinate(near.x(), near.y()),
            new Coordinate(far.x(), far.y()) });
        Geometry met = ray.intersection(Areas.of(guard.shape()));
        return met.isEmpty() ? FAR_MM : met.distance(Areas.FACTORY.createPoint(new Coordinate(at.x(), at.y())));
    }

    /** A corner where the waste ends in less than a right angle: at the end of a segment, or where the edge begins. */
    private static Optional<Finding> acute(EdgePath path, String subject) {
        for (int i = 0; i < path.segments().size(); i++) {
            Optional<Finding> found = acute(path.turnAtEndDeg(i), path.segments().get(i).end(), subject);
            if (found.isPresent()) {
                return found;
            }
        }
        return acute(path.turnAtStartDeg(), path.segments().getFirst().start(), subject);
    }

    private static Optional<Finding> acute(double turnDeg, Point corner, String subject) {
        double waste = 180 + turnDeg;
        return waste < RIGHT_ANGLE_DEG - 1
                ? Optional.of(Finding.at(corner, ToolingReason.ACUTE_CORNER, subject, waste, corner.x(), corner.y()))
                : Optional.empty();
    }
}
