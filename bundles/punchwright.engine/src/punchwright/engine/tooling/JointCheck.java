// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/** Which planned joints still stand after all chosen hits, which are wholly gone, and which are half cut. */
final class JointCheck {

    enum State {
        STANDS, GONE, HALF_CUT
    }

    private final List<Segment> edges = new ArrayList<>();
    private final List<Candidate> taken;

    JointCheck(Shape shape, List<Candidate> taken) {
        this.taken = taken;
        edges.addAll(shape.outer().segments());
        shape.holes().forEach(h -> edges.addAll(h.segments()));
    }

    List<MicroJoint> standing(Candidate c) {
        return c.joints().stream().filter(j -> state(j) != State.GONE).toList();
    }

    State state(MicroJoint joint) {
        Segment edge = edges.stream().min(Comparator.comparingDouble(s -> s.distance(joint.at()))).orElseThrow();
        double t = edge instanceof Arc arc ? share(arc, joint.at()) : edge.start().distance(joint.at()) / edge.lengthMm();
        Point along = edge.tangentAt(Math.min(1, t)).times(joint.widthMm() / 2 - 0.02);
        int cut = 0;
        for (int i = -1; i <= 1; i++) {
            cut += cut(joint.at().plus(along.times(i))) ? 1 : 0;
        }
        return cut == 0 ? State.STANDS : cut == 3 ? State.GONE : State.HALF_CUT;
    }

    private static double share(Arc arc, Point p) {
        double turn = (p.minus(arc.center()).angleRad() - arc.startRad()) * Math.signum(arc.sweepRad());
        double full = 2 * Math.PI;
        return (turn % full + full) % full / Math.abs(arc.sweepRad());
    }

    private boolean cut(Point p) {
        return taken.stream().flatMap(c -> c.pieces().stream())
                .anyMatch(piece -> piece.hits().stream().anyMatch(h -> piece.tool().footprint().covers(h, p, 0.001)));
    }
}
