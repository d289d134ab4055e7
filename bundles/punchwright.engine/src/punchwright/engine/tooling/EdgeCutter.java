// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.press.HitCount;
import punchwright.engine.press.Scallop;
import punchwright.engine.tooling.EdgePath.End;

/**
 * Hits of one tool that cut one segment of an edge from the waste side (the right of the direction of travel).
 *
 * <p>Straight segment, rectangular tool: the tool lies flush against the edge; at a corner where material follows it stops
 * flush, at one where waste follows it runs over by the least overlap, so that neighbouring cuts meet; hits are evenly pitched
 * with at least the least overlap. Micro-joints split the segment into cuts that stop flush on both sides of the joint.
 * Straight segment, round tool: evenly pitched by the permitted scallop. Arcs: {@link ArcCutter}.
 */
final class EdgeCutter {

    private final ToolingRules rules;
    private final ArcCutter arcs;

    EdgeCutter(ToolingRules rules) {
        this.rules = rules;
        arcs = new ArcCutter(rules);
    }

    /**
     * A way to cut a segment that has still to be held against the part.
     *
     * @param variants the same with ever less overrun at open corners; the first that does no harm counts
     * @param acrossMm how far the tool reaches into the waste
     */
    record Proposal(List<List<PartHit>> variants, double acrossMm) {
    }

    /** All ways of the tool to cut the segment; empty when it cannot. */
    List<Proposal> proposals(EdgePath path, int index, List<Double> joints, UsableTool tool) {
        Segment s = path.segments().get(index);
        double l = tool.tool().lengthMm();
        double w = tool.tool().widthMm();
        List<Proposal> ways = new ArrayList<>();
        if (s instanceof Line line && tool.rectangular()) {
            add(ways, w, over -> straight(path, index, line, joints, tool, l, w, 0, over));
            if (Math.abs(l - w) > 1e-9) {
                add(ways, l, over -> straight(path, index, line, joints, tool, w, l, 90, over));
            }
        } else if (s instanceof Line line && tool.round() && joints.isEmpty()) {
            add(ways, l, over -> nibbled(path, index, line, tool, over));
        } else if (s instanceof Arc arc) {
            addArc(ways, path, index, arc, joints, tool);
        }
        return ways;
    }

    private void addArc(List<Proposal> ways, EdgePath path, int index, Arc arc, List<Double> joints, UsableTool tool) {
        double l = tool.tool().lengthMm();
        double w = tool.tool().widthMm();
        if (tool.round() && joints.isEmpty()) {
            add(ways, l, over -> arcs.round(path, index, arc, tool, over));
        } else if (tool.tool().shape() == ToolShape.CORNER_RADIUS && joints.isEmpty()) {
            add(ways, l / 2, over -> arcs.rounded(arc, tool));
        } else if (tool.rectangular() && arc.sweepRad() > 0 && tool.tool().cornerRadiusMm() == 0) {
            add(ways, w, over -> arcs.tangents(path, index, arc, joints, tool, l, w, 0, over));
            if (Math.abs(l - w) > 1e-9) {
                add(ways, l, over -> arcs.tangents(path, index, arc, joints, tool, w, l, 90, over));
            }
        }
    }

    private void add(List<Proposal> ways, double acrossMm, DoubleFunction<List<PartHit>> hits) {
        List<List<PartHit>> variants = new ArrayList<>();
        for (double over : new double[] { rules.overlapMm(), EdgeSamples.BEYOND_MM + 0.1, 0 }) {
            List<PartHit> variant = hits.apply(over);
            if (!variant.isEmpty() && !variants.contains(variant)) {
                variants.add(variant);
            }
        }
        if (!variants.isEmpty()) {
            ways.add(new Proposal(variants, acrossMm));
        }
    }

    /** Rectangular tool with extent {@code along} on the edge and {@code across} into the waste. */
    private List<PartHit> straight(EdgePath path, int index, Line line, List<Double> joints, UsableTool tool, double along,
            double across, double turnDeg, double over) {
        Point dir = line.tangentAt(0);
        OptionalDouble angle = AngleFit.angleDeg(tool.tool(), tool.turning(), Math.toDegrees(dir.angleRad()) + turnDeg);
        if (angle.isEmpty()) {
            return List.of();
        }
        List<PartHit> hits = new ArrayList<>();
        double from = 0;
        End start = path.startOf(index);
        for (int i = 0; i <= joints.size(); i++) {
            boolean last = i == joints.size();
            double to = last ? line.lengthMm() : joints.get(i) - rules.microJointMm() / 2;
            List<Double> centers = centers(from, to, start, last ? path.endOf(index) : End.FLUSH, along,
                    over, tool.tool());
            if (centers.isEmpty()) {
                return List.of();
            }
            Point base = line.start().minus(dir.left().times(across / 2));
            centers.forEach(c -> hits.add(new PartHit(base.plus(dir.times(c)), angle.getAsDouble(), HitRole.SLIT)));
            from = last ? to : joints.get(i) + rules.microJointMm() / 2;
            start = End.FLUSH;
        }
        return hits;
    }

    /** Middles of the hits on the stretch from..to, measured along the edge; empty when the tool is too long. */
    private List<Double> centers(double from, double to, End start, End end, double along, double openMm, Tool tool) {
        double over = openMm + tool.cornerRadiusMm();
        double a = start == End.OVERRUN ? from - over : from;
        double b = end == End.OVERRUN ? to + over : to;
        double overlap = rules.overlapMm() + 2 * tool.cornerRadiusMm();
        if (along <= overlap + 1e-6) {
            return List.of();
        }
        if (b - a < along - 1e-6) {
            return shortStretch(a, b, start, end, along);
        }
        int n = HitCount.along(b - a, along, overlap);
        double pitch = HitCount.pitchMm(b - a, along, n);
        List<Double> centers = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            centers.add(a + along / 2 + i * pitch);
        }
        return centers;
    }

    private static List<Double> shortStretch(double a, double b, End start, End end, double along) {
        if (start == End.FLUSH && end == End.FLUSH) {
            return List.of();
        }
        if (start == End.FLUSH) {
            return List.of(a + along / 2);
        }
        return List.of(end == End.FLUSH ? b - along / 2 : (a + b) / 2);
    }

    private List<PartHit> nibbled(EdgePath path, int index, Line line, UsableTool tool, double over) {
        double r = tool.tool().lengthMm() / 2;
        if (r <= rules.scallopMm()) {
            return List.of();
        }
        Point base = line.start().minus(line.tangentAt(0).left().times(r));
        double from = path.startOf(index) == End.OVERRUN && path.sharpStart(index) ? -over : 0;
        double to = line.lengthMm() + (path.endOf(index) == End.OVERRUN && path.sharpEnd(index) ? over : 0);
        int steps = HitCount.steps(to - from, Scallop.straightPitchMm(r, rules.scallopMm()));
        List<PartHit> hits = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            hits.add(ArcCutter.roundHit(base.plus(line.tangentAt(0).times(from + (to - from) * i / steps)), tool));
        }
        return hits;
    }
}
