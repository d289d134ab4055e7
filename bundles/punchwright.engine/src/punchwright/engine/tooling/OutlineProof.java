// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/**
 * Last look at the chosen hits of a part: is the outer contour cut everywhere but in its joints, and does every joint stand?
 */
final class OutlineProof {

    private static final double TOLERANCE_MM = 0.005;

    private final ToolingJob job;
    private final Shape shape;

    OutlineProof(ToolingJob job, Shape shape) {
        this.job = job;
        this.shape = shape;
    }

    List<Finding> check(List<Candidate> taken, boolean complete) {
        String part = "part " + job.features().part();
        List<Finding> findings = new ArrayList<>();
        JointCheck check = new JointCheck(shape, taken);
        List<MicroJoint> joints = taken.stream().filter(c -> !c.feature().isOpening()).flatMap(c -> check.standing(c).stream())
                .toList();
        int asked = Math.max(2, job.rules().jointsPerPart());
        if (joints.size() < asked) {
            findings.add(Finding.of(ToolingReason.FEW_JOINTS, part, joints.size(), asked));
        }
        for (Candidate c : taken) {
            c.joints().stream().filter(j -> check.state(j) == JointCheck.State.HALF_CUT).forEach(j ->
                    findings.add(Finding.at(j.at(), ToolingReason.JOINT_CUT, part, j.at().x(), j.at().y())));
        }
        if (complete) {
            uncut(taken, joints, part, findings);
        }
        return findings;
    }

    private void uncut(List<Candidate> taken, List<MicroJoint> joints, String part, List<Finding> findings) {
        List<List<Double>> none = shape.outer().segments().stream().map(s -> List.<Double>of()).toList();
        EdgeSamples samples = new EdgeSamples(shape.outer().segments(), none, 0);
        BitSet cut = new BitSet();
        for (Candidate c : taken) {
            for (Piece p : c.pieces()) {
                p.hits().forEach(h -> cut.or(samples.covered(p.tool().footprint(), h, job.rules().scallopMm() + TOLERANCE_MM)));
            }
        }
        for (int i = 0; i < samples.size(); i++) {
            Point p = samples.point(i);
            if (!cut.get(i) && joints.stream().noneMatch(j -> j.at().distance(p) <= j.widthMm() / 2 + 1e-6)) {
                findings.add(Finding.at(p, ToolingReason.UNCUT, part, p.x(), p.y()));
                return;
            }
        }
    }
}
