// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Point;
import punchwright.engine.press.HitCount;
import punchwright.engine.press.Scallop;
import punchwright.engine.tooling.EdgePath.End;

/**
 * Hits of one tool that cut one arc of an edge from the waste side.
 *
 * <p>Round tool: on the parallel arc, evenly pitched by the permitted scallop, from inside or outside; one hit where the tool
 * fills an inside arc. Rectangular tool that turns, convex arc: tangents, evenly pitched by the same scallop; it can leave
 * micro-joints. Corner-radius tool, convex arc of its radius: one hit.
 */
final class ArcCutter {

    /** Radii nearer than this count as equal, mm. */
    private static final double SAME_RADIUS_MM = 0.006;
    /** Most of an arc that a cut runs over its end, rad. */
    private static final double MOST_OVERRUN_RAD = 0.5;

    private final ToolingRules rules;

    ArcCutter(ToolingRules rules) {
        this.rules = rules;
    }

    /** Round tool; {@code over} mm beyond sharp open corners. */
    List<PartHit> round(EdgePath path, int index, Arc arc, UsableTool tool, double over) {
        double r = tool.tool().lengthMm() / 2;
        boolean inside = arc.sweepRad() < 0;
        double radius = inside ? arc.radiusMm() - r : arc.radiusMm() + r;
        if (r <= rules.scallopMm() || radius < -SAME_RADIUS_MM) {
            return List.of();
        }
        if (inside && radius < SAME_RADIUS_MM) {
            return List.of(roundHit(arc.center(), tool));
        }
        double step = inside ? Scallop.insideStepRad(arc.radiusMm(), r, rules.scallopMm())
                : Scallop.outsideStepRad(arc.radiusMm(), r, rules.scallopMm());
        Arc run = overrun(path, index, arc, radius, over);
        int steps = HitCount.steps(Math.abs(run.sweepRad()), step);
        List<PartHit> hits = new ArrayList<>();
        for (int i = 0; i < (run.isFullCircle() ? steps : steps + 1); i++) {
            hits.add(roundHit(run.center().plus(Point.polar(radius, run.startRad() + run.sweepRad() * i / steps)), tool));
        }
        return hits;
    }

    /** The arc made longer at sharp open corners so that the axis travels on by {@code over}. */
    private static Arc overrun(EdgePath path, int index, Arc arc, double pathRadius, double over) {
        double turn = Math.signum(arc.sweepRad()) * Math.min(MOST_OVERRUN_RAD, over / pathRadius);
        double before = !arc.isFullCircle() && path.startOf(index) == End.OVERRUN && path.sharpStart(index) ? turn : 0;
        double after = !arc.isFullCircle() && path.endOf(index) == End.OVERRUN && path.sharpEnd(index) ? turn : 0;
        return new Arc(arc.center(), arc.radiusMm(), arc.startRad() - before, arc.sweepRad() + before + after);
    }

    static PartHit roundHit(Point at, UsableTool tool) {
        return new PartHit(at, AngleFit.angleDeg(tool.tool(), false, 0).orElse(0), HitRole.NIBBLE);
    }

    /** Rectangular tool with extent {@code along} on the tangent and {@code across} outward; convex arcs only. */
    List<PartHit> tangents(EdgePath path, int index, Arc arc, List<Double> joints, UsableTool tool, double along, double across,
            double turnDeg, double over) {
        double reach = Math.atan(along / 2 / arc.radiusMm());
        double seen = Math.min(reach, Math.acos(arc.radiusMm() / (arc.radiusMm() + rules.scallopMm())));
        double step = 2 * Math.min(seen, reach - rules.overlapMm() / 2 / arc.radiusMm());
        if (arc.sweepRad() <= 0 || step <= 1e-4 || !joints.isEmpty() && seen < reach) {
            return List.of();
        }
        List<Double> angles = new ArrayList<>();
        for (double[] stretch : stretches(path, index, arc, joints, reach, seen, over)) {
            if (stretch[1] < stretch[0] - 1e-9) {
                return List.of();
            }
            int steps = HitCount.steps(stretch[1] - stretch[0], step);
            boolean around = arc.isFullCircle() && joints.isEmpty();
            for (int i = 0; i <= (around ? steps - 1 : stretch[1] - stretch[0] < 1e-9 ? 0 : steps); i++) {
                angles.add(stretch[0] + (stretch[1] - stretch[0]) * i / steps);
            }
        }
        return hits(arc, angles, tool, across, turnDeg);
    }

    private static List<PartHit> hits(Arc arc, List<Double> angles, UsableTool tool, double across, double turnDeg) {
        List<PartHit> hits = new ArrayList<>();
        for (double a : angles) {
            OptionalDouble set = AngleFit.angleDeg(tool.tool(), tool.turning(), Math.toDegrees(a) + 90 + turnDeg);
            if (set.isEmpty()) {
                return List.of();
            }
            hits.add(new PartHit(arc.center().plus(Point.polar(arc.radiusMm() + across / 2, a)), set.getAsDouble(),
                    HitRole.SLIT));
        }
        return hits;
    }

    /**
     * First and last tangent, rad, of each stretch between joints. A hit ends flush at a joint or where material follows, and
     * may run over the end of the arc elsewhere.
     */
    private List<double[]> stretches(EdgePath path, int index, Arc arc, List<Double> joints, double reach, double seen,
            double over) {
        double r = arc.radiusMm();
        double half = rules.microJointMm() / 2 / r;
        double end = arc.startRad() + arc.sweepRad();
        List<double[]> all = new ArrayList<>();
        if (arc.isFullCircle()) {
            if (joints.isEmpty()) {
                return List.of(new double[] { arc.startRad(), end });
            }
            for (int i = 0; i < joints.size(); i++) {
                double next = i + 1 < joints.size() ? joints.get(i + 1) / r : joints.getFirst() / r + 2 * Math.PI;
                all.add(new double[] { arc.startRad() + joints.get(i) / r + half + reach, arc.startRad() + next - half - reach });
            }
            return all;
        }
        double from = arc.startRad() + (path.startOf(index) == End.FLUSH ? reach : seen - over / r);
        for (double joint : joints) {
            all.add(new double[] { from, arc.startRad() + joint / r - half - reach });
            from = arc.startRad() + joint / r + half + reach;
        }
        double to = end - (path.endOf(index) == End.FLUSH ? reach : seen - over / r);
        boolean free = joints.isEmpty() && path.startOf(index) == End.OVERRUN && path.endOf(index) == End.OVERRUN;
        all.add(free && to < from ? new double[] { (from + to) / 2, (from + to) / 2 } : new double[] { from, to });
        return all;
    }

    /** The tool's hollow of the arc's radius set on the arc, its square's diagonal through the middle of the arc. */
    List<PartHit> rounded(Arc arc, UsableTool tool) {
        double r = tool.tool().cornerRadiusMm();
        if (arc.sweepRad() <= 0 || arc.sweepRad() > Math.PI / 2 + 1e-6 || Math.abs(r - arc.radiusMm()) > SAME_RADIUS_MM) {
            return List.of();
        }
        double middle = arc.startRad() + arc.sweepRad() / 2;
        OptionalDouble angle = AngleFit.angleDeg(tool.tool(), tool.turning(), Math.toDegrees(middle) - 45);
        if (angle.isEmpty()) {
            return List.of();
        }
        Point at = arc.center().plus(Point.polar(tool.tool().lengthMm() / Math.sqrt(2), middle));
        return List.of(new PartHit(at, angle.getAsDouble(), HitRole.PIERCE));
    }
}
