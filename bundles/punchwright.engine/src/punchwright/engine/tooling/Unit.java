// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.geometry.Segment;

/**
 * What is made together: one feature, openings that a cluster tool hits together, or neighbouring edges of the outer contour
 * that meet
 * in corners where the waste is convex (the sides of a notch), since one hit may cut several of them.
 *
 * @param feature what is made; for several edges a feature with their joined path and the first one's number
 * @param members the features themselves
 * @param cluster hits of a cluster tool that make all members; null where there is none
 */
record Unit(Feature feature, List<Feature> members, ClusterFinder.Found cluster) {

    /** Longest path of edges made together, mm, and most edges. */
    private static final double LONGEST_MM = 250;
    private static final int MOST_EDGES = 4;

    Unit(Feature feature, List<Feature> members) {
        this(feature, members, null);
    }

    static List<Unit> of(FeatureSet set) {
        List<Unit> units = new ArrayList<>();
        List<Feature> run = new ArrayList<>();
        for (Feature f : set.features()) {
            boolean joins = !run.isEmpty() && edge(f) && meets(run.getLast(), f);
            if (!joins) {
                close(run, units);
            }
            if (edge(f)) {
                run.add(f);
            } else {
                units.add(new Unit(f, List.of(f)));
            }
        }
        close(run, units);
        return units;
    }

    /** Each member on its own. */
    List<Unit> split() {
        return members.stream().map(f -> new Unit(f, List.of(f))).toList();
    }

    private static boolean edge(Feature f) {
        return (f.kind() == FeatureKind.STRAIGHT_EDGE || f.kind() == FeatureKind.ARC_EDGE) && f.path().size() == 1;
    }

    private static boolean meets(Feature a, Feature b) {
        Segment in = a.path().getLast();
        Segment out = b.path().getFirst();
        EdgePath path = new EdgePath(List.of(in, out), false, null, null);
        return in.end().distance(out.start()) < 0.01 && path.sharpEnd(0) && path.endOf(0) == EdgePath.End.FLUSH;
    }

    private static void close(List<Feature> run, List<Unit> units) {
        double length = run.stream().mapToDouble(f -> f.path().getFirst().lengthMm()).sum();
        if (run.size() < 2 || run.size() > MOST_EDGES || length > LONGEST_MM) {
            run.forEach(f -> units.add(new Unit(f, List.of(f))));
        } else {
            Feature first = run.getFirst();
            FeatureKind kind = run.size() == 2 ? FeatureKind.CORNER_NOTCH : FeatureKind.EDGE_NOTCH;
            List<Segment> path = run.stream().flatMap(f -> f.path().stream()).toList();
            units.add(new Unit(new Feature(first.number(), kind, path.get(path.size() / 2).pointAt(0.5), first.angleDeg(),
                    length, 0,
                    0, null, path, ""), List.copyOf(run)));
        }
        run.clear();
    }
}
