// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.InsideTest;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Segment;

/**
 * Where micro-joints hold a part in the skeleton, or a slug in its opening: on straight edges (large convex arcs where a part has
 * no straight edge), spread evenly and away from corners; the next joint always goes to the edge whose stretches between joints
 * are longest.
 */
final class JointPlan {

    /** Shortest edge that takes a joint, mm. */
    static final double SHORTEST_EDGE_MM = 12;
    private static final int LEAST = 2;
    private static final double LEAST_RADIUS_MM = 10;
    /** Waste up to this width between two edges of the part is a slot. */
    private static final double SLOT_MM = 9;

    private JointPlan() {
    }

    /** Joints on the edges of the outer contour: feature number to middles in mm from the edge's start. */
    static Map<Integer, List<Double>> outer(List<Feature> features, Contour outer, ToolingRules rules) {
        InsideTest part = new InsideTest(outer, 0.01);
        List<Feature> edges = features.stream().filter(f -> f.kind() == FeatureKind.STRAIGHT_EDGE && takes(f, part)).toList();
        if (edges.isEmpty()) {
            edges = features.stream().filter(f -> f.kind() == FeatureKind.ARC_EDGE && takes(f, part)).toList();
        }
        List<Segment> segments = edges.stream().map(f -> f.path().getFirst()).toList();
        List<List<Double>> joints = spread(segments, Math.max(LEAST, rules.jointsPerPart()));
        Map<Integer, List<Double>> plan = new LinkedHashMap<>();
        for (int i = 0; i < edges.size(); i++) {
            plan.put(edges.get(i).number(), joints.get(i));
        }
        return plan;
    }

    private static boolean takes(Feature f, InsideTest part) {
        return f.path().size() == 1 && holds(f.path().getFirst()) && open(f.path().getFirst(), part);
    }

    /** Whether there is skeleton to hang on: the waste beside the edge is no narrow slot of the part itself. */
    private static boolean open(Segment s, InsideTest part) {
        for (double share : new double[] { 0.25, 0.5, 0.75 }) {
            for (double out : new double[] { SLOT_MM / 3, 2 * SLOT_MM / 3, SLOT_MM }) {
                if (part.contains(s.pointAt(share).minus(s.tangentAt(share).left().times(out)))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Long straight edges and large convex arcs. */
    private static boolean holds(Segment s) {
        boolean form = s instanceof Line || s instanceof Arc arc && arc.sweepRad() > 0 && arc.radiusMm() >= LEAST_RADIUS_MM;
        return form && s.lengthMm() >= SHORTEST_EDGE_MM;
    }

    /** Joints for each segment of an outline; fewer than {@code count} only when no segment takes one. */
    static List<List<Double>> spread(List<Segment> segments, int count) {
        int[] number = new int[segments.size()];
        for (int placed = 0; placed < count; placed++) {
            int best = -1;
            for (int i = 0; i < number.length; i++) {
                if (holds(segments.get(i)) && (best < 0 || better(segments, number, i, best))) {
                    best = i;
                }
            }
            if (best >= 0) {
                number[best]++;
            }
        }
        List<List<Double>> joints = new ArrayList<>();
        for (int i = 0; i < number.length; i++) {
            joints.add(even(segments.get(i).lengthMm(), number[i]));
        }
        return joints;
    }

    /** Longer stretch; of equal ones the edge with fewer joints. */
    private static boolean better(List<Segment> segments, int[] number, int i, int best) {
        double longer = stretch(segments, number, i) - stretch(segments, number, best);
        return longer > 1e-6 || longer > -1e-6 && number[i] < number[best];
    }

    private static double stretch(List<Segment> segments, int[] number, int i) {
        return segments.get(i).lengthMm() / (number[i] + 1);
    }

    private static List<Double> even(double length, int count) {
        List<Double> middles = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            middles.add(length * (k + 0.5) / count);
        }
        return middles;
    }
}
