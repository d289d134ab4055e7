// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Points along an edge, close enough together to tell whether hits cut it everywhere. A point in a micro-joint is left out.
 */
final class EdgeSamples {

    /** How far cuts run over a sharp outer corner at least. */
    static final double BEYOND_MM = 0.4;
    private static final double STEP_MM = 0.25;

    private final List<Point> points = new ArrayList<>();
    private final BitSet ends = new BitSet();

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
        if (s instanceof Line && path.sharpStart(i) && path.startOf(i) == EdgePath.End.OVERRUN) {
            ends.set(points.size());
            points.add(s.start().minus(s.tangentAt(0).times(BEYOND_MM)));
        }
        if (s instanceof Line && path.sharpEnd(i) && path.endOf(i) == EdgePath.End.OVERRUN) {
            ends.set(points.size());
            points.add(s.end().plus(s.tangentAt(1).times(BEYOND_MM)));
        }
    }

    private void add(Segment s, List<Double> joints, double jointMm) {
        int steps = Math.max(4, (int) Math.ceil(s.lengthMm() / STEP_MM));
        for (int i = 0; i <= steps; i++) {
            double at = s.lengthMm() * i / steps;
            if (joints.stream().noneMatch(j -> Math.abs(at - j) < jointMm / 2 + 1e-6)) {
                ends.set(points.size(), i == 0 || i == steps);
                points.add(s.pointAt((double) i / steps));
            }
        }
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
        for (int i = 0; i < points.size(); i++) {
            if (footprint.covers(hit, points.get(i), toleranceMm)) {
                set.set(i);
            }
        }
        return set;
    }
}
