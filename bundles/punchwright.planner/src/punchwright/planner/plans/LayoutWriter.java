// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Point;
import punchwright.engine.motion.Cause;
import punchwright.engine.planning.PartPlan;
import punchwright.engine.planning.SheetRun;
import punchwright.engine.sequence.SequencedHit;
import punchwright.engine.tooling.MicroJoint;
import punchwright.engine.tooling.Operation;
import punchwright.model.plan.Hit;
import punchwright.model.plan.HitRole;
import punchwright.model.plan.Holding;
import punchwright.model.plan.Layout;
import punchwright.model.plan.Placement;
import punchwright.model.plan.PlanFactory;
import punchwright.model.plan.Remnant;
import punchwright.model.plan.TimeCause;
import punchwright.model.plan.TimeShare;
import punchwright.model.plan.ToolUse;

/** Writes one layout: placements, holdings, hits in order, micro-joints, times. */
final class LayoutWriter {

    private static final PlanFactory FACTORY = PlanFactory.eINSTANCE;

    private final PlanWriter.Origin origin;
    private final String jobId;
    private final Map<Integer, ToolUse> uses;
    private final Map<String, punchwright.model.plan.Operation> operations;
    private Layout out;

    LayoutWriter(PlanWriter.Origin origin, String jobId, Map<Integer, ToolUse> uses,
            Map<String, punchwright.model.plan.Operation> operations) {
        this.origin = origin;
        this.jobId = jobId;
        this.uses = uses;
        this.operations = operations;
    }

    Layout write(SheetRun run, int number, punchwright.engine.planning.SheetJob job) {
        out = FACTORY.createLayout();
        out.setId(jobId + "-L" + number);
        out.setNumber(number);
        out.setStock(origin.library().getStock().stream().filter(s -> s.getId().equals(run.layout().sheet().id())).findFirst()
                .orElse(null));
        out.setLengthMm(run.layout().sheet().lengthMm());
        out.setWidthMm(run.layout().sheet().widthMm());
        out.setRunCount(run.layout().runs());
        out.setWebMm(job.webMm());
        out.setClampZoneMm(origin.machine().getClamps().getDepthMm());
        out.setCycleTimeS(run.timeline().totalS());
        out.setBoundTimeS(run.timeline().boundS());
        Map<String, PartPlan> byId = new LinkedHashMap<>();
        job.parts().forEach(p -> byId.put(p.demand().id(), p));
        placements(run, byId);
        job.nesting().remnants().stream().filter(r -> r.layout() == number - 1).forEach(this::remnant);
        run.holdings().holdings().forEach(h -> holding(h, run.sequence().parks().get(h.index())));
        hits(run, byId);
        times(run);
        return out;
    }

    private void placements(SheetRun run, Map<String, PartPlan> byId) {
        double area = 0;
        int number = 1;
        for (punchwright.engine.nesting.Placement p : run.layout().placements()) {
            Placement placement = FACTORY.createPlacement();
            placement.setId(out.getId() + "-P" + number);
            placement.setNumber(number++);
            placement.setPart(origin.parts().get(p.partId()));
            placement.setXMm(p.pose().x());
            placement.setYMm(p.pose().y());
            placement.setAngleDeg(p.pose().angleDeg());
            placement.setMirrored(p.pose().mirrored());
            out.getPlacements().add(placement);
            area += byId.get(p.partId()).demand().shape().areaMm2();
            joints(byId.get(p.partId()), p, placement);
        }
        out.setUtilisationPercent(100 * area / (out.getLengthMm() * out.getWidthMm()));
    }

    private void joints(PartPlan part, punchwright.engine.nesting.Placement placed, Placement placement) {
        for (Operation op : part.operations().operations()) {
            for (MicroJoint joint : op.joints()) {
                Point at = placed.pose().apply(joint.at());
                punchwright.model.plan.MicroJoint j = FACTORY.createMicroJoint();
                j.setPlacement(placement);
                j.setXMm(at.x());
                j.setYMm(at.y());
                j.setWidthMm(joint.widthMm());
                out.getMicroJoints().add(j);
            }
        }
    }

    private void remnant(punchwright.engine.nesting.Remnant r) {
        Remnant remnant = FACTORY.createRemnant();
        remnant.setXMm(r.xMm());
        remnant.setYMm(r.yMm());
        remnant.setLengthMm(r.lengthMm());
        remnant.setWidthMm(r.widthMm());
        out.getRemnants().add(remnant);
    }

    private void holding(punchwright.engine.holding.Holding h, Point park) {
        Holding holding = FACTORY.createHolding();
        holding.setId(out.getId() + "-H" + (h.index() + 1));
        holding.setIndex(h.index() + 1);
        holding.setSheetOffsetMm(h.clamps().reachFromMm());
        holding.getClampPositionsMm().addAll(h.clamps().clampCentersMm());
        holding.setTurned(h.clamps().turned());
        holding.setReachMinXMm(h.clamps().reachFromMm());
        holding.setReachMaxXMm(h.clamps().reachToMm());
        holding.setReachMaxYMm(origin.machine().getTravelYMm());
        if (park != null) {
            holding.setParkXMm(park.x());
            holding.setParkYMm(park.y());
        }
        out.getHoldings().add(holding);
    }

    private void hits(SheetRun run, Map<String, PartPlan> byId) {
        Map<Integer, Double> starts = new LinkedHashMap<>();
        run.timeline().events().stream().filter(e -> e.hitId() >= 0)
                .forEach(e -> starts.merge(e.hitId(), e.startS(), Math::min));
        for (SequencedHit s : run.sequence().hits()) {
            Hit hit = FACTORY.createHit();
            hit.setXMm(s.hit().at().x());
            hit.setYMm(s.hit().at().y());
            hit.setAngleDeg(s.hit().angleDeg());
            hit.setRole(HitRole.getByName(s.hit().role().name()));
            hit.setStartS(starts.getOrDefault(s.hit().id(), 0.0));
            hit.setToolUse(uses.get(s.hit().use().number()));
            hit.setHolding(out.getHoldings().get(s.holding()));
            hit.setPlacement(out.getPlacements().get(s.hit().placement()));
            String part = run.layout().placements().get(s.hit().placement()).partId();
            hit.setOperation(operations.get(byId.get(part).demand().id() + "|" + s.hit().operation()));
            out.getHits().add(hit);
        }
    }

    private void times(SheetRun run) {
        for (Cause cause : Cause.values()) {
            double seconds = run.timeline().secondsByCause().getOrDefault(cause, 0.0);
            if (seconds > 0) {
                TimeShare share = FACTORY.createTimeShare();
                share.setCause(TimeCause.getByName(cause.name()));
                share.setSeconds(seconds);
                share.setCount((int) run.timeline().events().stream().filter(e -> e.cause() == cause).count());
                out.getTimes().add(share);
            }
        }
    }

}
