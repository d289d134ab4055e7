// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;
import punchwright.engine.holding.Holding;
import punchwright.engine.holding.HoldingJob;
import punchwright.engine.holding.HoldingPlan;
import punchwright.engine.holding.HoldingPlanner;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.motion.MotionJob;
import punchwright.engine.motion.RunTime;
import punchwright.engine.motion.Timeline;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.Placement;
import punchwright.engine.press.Material;
import punchwright.engine.proof.Proof;
import punchwright.engine.proof.ProofForm;
import punchwright.engine.proof.ProofHit;
import punchwright.engine.proof.ProofJob;
import punchwright.engine.proof.ProofResult;
import punchwright.engine.sequence.PrecedenceRules;
import punchwright.engine.sequence.Sequence;
import punchwright.engine.sequence.SequenceJob;
import punchwright.engine.sequence.Sequencer;
import punchwright.engine.tooling.Loading;
import punchwright.engine.tooling.MicroJoint;
import punchwright.engine.tooling.Operation;

/** Works out one layout: hits on the sheet, holdings, order, time and proof. */
final class SheetRunPlanner {

    private final PlanRequest request;
    private final Material material;
    private final double thicknessMm;
    private final Map<String, PartPlan> parts = new LinkedHashMap<>();
    private final Loading loading;

    SheetRunPlanner(PlanRequest request, Material material, double thicknessMm, List<PartPlan> partPlans, Loading loading) {
        this.request = request;
        this.material = material;
        this.thicknessMm = thicknessMm;
        this.loading = loading;
        partPlans.forEach(p -> parts.put(p.demand().id(), p));
    }

    SheetRun plan(Layout layout) {
        List<SheetHit> hits = hits(layout);
        HoldingPlan holdings = HoldingPlanner.plan(
                new HoldingJob(request.machine(), layout.sheet().lengthMm(), layout.sheet().widthMm(), hits,
                        thicknessMm));
        Sequence sequence = Sequencer.order(new SequenceJob(request.machine(), hits, holdings, request.rules().workLimit(),
                request.rules().seed(), thicknessMm), PrecedenceRules.with(request.rules().order()));
        Timeline timeline = RunTime.of(new MotionJob(request.machine(), holdings, sequence, 0));
        ProofResult proof = Proof.prove(proofJob(layout, holdings, sequence));
        return new SheetRun(layout, hits, holdings, sequence, timeline, proof);
    }

    /** The parts' hits, and those that punch away loose slivers between the parts. */
    private List<SheetHit> hits(Layout layout) {
        SheetHits hits = new SheetHits(parts, loading);
        hits.on(layout);
        List<Shape> shapes = new ArrayList<>();
        List<Point> joints = new ArrayList<>();
        double jointMm = 0;
        for (Placement placement : layout.placements()) {
            PartPlan part = parts.get(placement.partId());
            shapes.add(part.demand().shape().moved(placement.pose()));
            jointMm = Math.max(jointMm, addJoints(part, placement.pose(), joints));
        }
        return hits.without(shapes, joints, jointMm, Math.max(1, thicknessMm), request.rules().tooling().scallopMm());
    }

    static List<Finding> findings(SheetRun run) {
        List<Finding> all = new ArrayList<>(run.holdings().findings());
        all.addAll(run.sequence().findings());
        all.addAll(run.proof().findings());
        return all;
    }

    private ProofJob proofJob(Layout layout, HoldingPlan holdings, Sequence sequence) {
        List<Shape> shapes = new ArrayList<>();
        List<Point> joints = new ArrayList<>();
        List<ProofForm> forms = new ArrayList<>();
        double jointMm = 0;
        for (Placement placement : layout.placements()) {
            PartPlan part = parts.get(placement.partId());
            addForms(part, placement.pose(), shapes.size(), forms);
            shapes.add(part.demand().shape().moved(placement.pose()));
            jointMm = Math.max(jointMm, addJoints(part, placement.pose(), joints));
        }
        List<ProofHit> hits = sequence.hits().stream().map(s -> new ProofHit(s.hit().id(), s.hit().at().x(), s.hit().at().y(),
                s.hit().angleDeg(), s.hit().use().tool(), s.holding())).toList();
        return new ProofJob(request.machine(), material, thicknessMm, layout.sheet().lengthMm(), layout.sheet().widthMm(),
                shapes, joints, jointMm, hits, holdings.holdings().stream().map(Holding::clamps).toList(),
                request.rules().tooling().scallopMm() + request.rules().tooling().sizeToleranceMm(),
                loading.uses(), forms, sequence.parks());
    }

    private static void addForms(PartPlan part, Pose pose, int number, List<ProofForm> forms) {
        part.demand().forms().forEach(f -> forms.add(
                new ProofForm(number, f.shape(), pose.apply(f.at()), pose.applyAngleDeg(f.angleDeg()),
                        f.lengthMm())));
    }

    private static double addJoints(PartPlan part, Pose pose, List<Point> joints) {
        double widest = 0;
        for (Operation op : part.operations().operations()) {
            for (MicroJoint joint : op.joints()) {
                joints.add(pose.apply(joint.at()));
                widest = Math.max(widest, joint.widthMm());
            }
        }
        return widest;
    }
}
