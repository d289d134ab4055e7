// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Points along an edge, close enough together to tell whether hits cut it everywhere. Micro-joints are left out.
 */
final class EdgeSamples {

    /** How far cuts run over a sharp outer corner at least. */
    static final double BEYOND_MM = 0.4;
    private static final double STEP_MM = 0.25;
    private static final double SMALL_ARC_MM = 6;

    private final List<Point> points = new ArrayList<>();
    private final BitSet ends = new BitSet();
    private final BitSet beyond = new BitSet();
    private final List<Run> runs = new ArrayList<>();

    /** Samples of one segment: where they stand in the list, and where a straight one runs. */
    private record Run(int first, int count, boolean straight, Point start, Point direction, double step) {
    }

    /** Samples of a whole path; {@code joints} holds per segment the middles of joints in mm from the segment's start. */
    EdgeSamples(List<Segment> path, List<List<Double>> joints, double jointMm) {
        for (int i = 0; i < path.size(); i++) {
            add(path.get(i), joints.get(i), jointMm);
        }
    }

    /** The same with a point just beyond each sharp corner that cuts run over, so that neighbouring cuts meet there. */
    EdgeSamples(EdgePath path, List<List<Double>> joints, double jointMm) {
        this(path.segments(), joints, jointMm);
        for (int i = 0; i < path.segments().size(); i++) {
            addBeyond(path, i);
        }
    }

    private void addBeyond(EdgePath path, int i) {
        Segment s = path.segments().get(i);
        if (path.sharpStart(i) && path.startOf(i) == EdgePath.End.OVERRUN) {
            addSingle(s.start().minus(s.tangentAt(0).times(BEYOND_MM)));
        }
        if (path.sharpEnd(i) && path.endOf(i) == EdgePath.End.OVERRUN) {
            addSingle(s.end().plus(s.tangentAt(1).times(BEYOND_MM)));
        }
    }

    private void addSingle(Point p) {
        runs.add(new Run(points.size(), 1, false, p, Point.ORIGIN, 1));
        ends.set(points.size());
        beyond.set(points.size());
        points.add(p);
    }

    /** Finer on small arcs, where a cusp rises steeply. */
    private static double stepMm(Segment s) {
        return s instanceof Arc arc ? arc.radiusMm() < SMALL_ARC_MM ? STEP_MM / 5 : STEP_MM / 2 : STEP_MM;
    }

    /** Straight stretches between joints are runs of their own, so that sample numbers follow the way along the edge. */
    private void add(Segment s, List<Double> joints, double jointMm) {
        double from = 0;
        for (int j = 0; j <= joints.size(); j++) {
            boolean last = j == joints.size();
            double to = last ? s.lengthMm() : joints.get(j) - jointMm / 2 - 1e-6;
            addStretch(s, from, to);
            from = last ? to : joints.get(j) + jointMm / 2 + 1e-6;
        }
    }

    private void addStretch(Segment s, double from, double to) {
        int steps = Math.max(4, (int) Math.ceil((to - from) / stepMm(s)));
        double step = (to - from) / steps;
        runs.add(new Run(points.size(), steps + 1, s instanceof Line, s.pointAt(from / s.lengthMm()), s.tangentAt(0), step));
        for (int i = 0; i <= steps; i++) {
            ends.set(points.size(), i == 0 || i == steps);
            points.add(s.pointAt((from + i * step) / s.lengthMm()));
        }
    }

    /** Number of samples on the edge itself that are not in the set; points beyond corners are welcome but not asked for. */
    int missing(BitSet covered) {
        BitSet missing = new BitSet();
        missing.set(0, points.size());
        missing.andNot(covered);
        missing.andNot(beyond);
        return missing.cardinality();
    }

    int size() {
        return points.size();
    }

    Point point(int i) {
        return points.get(i);
    }

    /** Less one sample at both ends of every run, except at the ends of a segment. */
    BitSet shortened(BitSet covered) {
        BitSet inner = (BitSet) covered.clone();
        for (int i = covered.nextSetBit(0); i >= 0; i = covered.nextSetBit(i + 1)) {
            boolean edge = i == 0 || i == points.size() - 1 || !covered.get(i - 1) || !covered.get(i + 1);
            if (edge && !ends.get(i)) {
                inner.clear(i);
            }
        }
        return inner;
    }

    BitSet covered(Footprint footprint, PartHit hit, double toleranceMm) {
        BitSet set = new BitSet(points.size());
        double reach = footprint.radiusMm() + toleranceMm;
        for (Run run : runs) {
            double middle = hit.at().minus(run.start).dot(run.direction);
            int from = run.straight ? Math.max(0, (int) ((middle - reach) / run.step)) : 0;
            int to = run.straight ? Math.min(run.count, (int) ((middle + reach) / run.step) + 2) : run.count;
            for (int i = run.first + from; i < run.first + to; i++) {
                if (footprint.covers(hit, points.get(i), toleranceMm)) {
                    set.set(i);
                }
            }
        }
        return set;
    }
}
