// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.List;
import java.util.Map;

import punchwright.engine.planning.EnginePlan;
import punchwright.engine.planning.SheetJob;
import punchwright.model.plan.Finding;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanFactory;
import punchwright.model.plan.PlanStatus;
import punchwright.model.plan.Severity;
import punchwright.model.plan.TimeShare;
import punchwright.model.shop.Library;
import punchwright.model.work.Order;
import punchwright.model.work.Part;

/** Writes an engine plan as a model plan. */
public final class PlanWriter {

    /** What a plan was made from. */
    public record Origin(Order order, punchwright.model.shop.Machine machine, Library library, Map<String, Part> parts,
            String programVersion) {
    }

    private final Origin origin;

    public PlanWriter(Origin origin) {
        this.origin = origin;
    }

    /** The plan without its cost. */
    public Plan write(EnginePlan engine) {
        Plan plan = PlanFactory.eINSTANCE.createPlan();
        plan.setId("plan-" + origin.order().getId() + "-" + origin.machine().getId());
        plan.setName(origin.order().getNumber() + " on " + origin.machine().getName());
        plan.setOrder(origin.order());
        plan.setMachine(origin.machine());
        plan.setStatus(engine.makeable() ? PlanStatus.PROVEN : PlanStatus.INCOMPLETE);
        plan.setLibraryRevision(lastRevision(origin.library()));
        plan.setProgramVersion(origin.programVersion());
        plan.setInputsDigest(InputsDigest.of(engine.request(), origin));
        plan.setSeed(engine.request().rules().seed());
        int number = 1;
        for (SheetJob job : engine.jobs()) {
            plan.getJobs().add(new JobWriter(origin, "J" + number++).write(job));
        }
        plan.setTotalTimeS(plan.getJobs().stream().mapToDouble(PlanWriter::seconds).sum());
        if (engine.makeable()) {
            plan.getChecks().addAll(engine.jobs().stream().flatMap(j -> j.runs().stream())
                    .flatMap(r -> r.proof().checks().stream()).distinct().toList());
        }
        engine.findings().forEach(f -> plan.getFindings().add(finding(f)));
        return plan;
    }

    /** Set-up and all runs of a job, s. */
    private static double seconds(punchwright.model.plan.SheetJob job) {
        return job.getSetUp().stream().mapToDouble(TimeShare::getSeconds).sum()
                + job.getLayouts().stream().mapToDouble(l -> l.getCycleTimeS() * l.getRunCount()).sum();
    }

    /** Number of the newest revision; 0 where there is none. */
    public static int lastRevision(Library library) {
        return library.getRevisions().stream().mapToInt(r -> r.getNumber()).max().orElse(0);
    }

    /** An engine finding as a model finding. */
    public static Finding finding(punchwright.engine.finding.Finding f) {
        Finding out = PlanFactory.eINSTANCE.createFinding();
        out.setSeverity(Severity.getByName(f.severity().name()));
        out.setCode(f.code());
        out.setSubject(f.subject());
        out.setMessage(f.message());
        out.setRemedy(f.remedy());
        f.placeIfAny().ifPresent(p -> {
            out.setLocated(true);
            out.setXMm(p.x());
            out.setYMm(p.y());
        });
        return out;
    }

    /** Model findings of many engine findings, in order. */
    public static List<Finding> findings(List<punchwright.engine.finding.Finding> list) {
        return list.stream().map(PlanWriter::finding).toList();
    }
}
