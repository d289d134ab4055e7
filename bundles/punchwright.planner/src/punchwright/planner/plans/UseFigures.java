// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.Map;

import punchwright.engine.planning.PartPlan;
import punchwright.engine.planning.SheetJob;
import punchwright.engine.planning.SheetRun;
import punchwright.engine.tooling.Operation;
import punchwright.engine.tooling.Tool;
import punchwright.model.plan.ToolUse;

/** Hits, force, clearance and share of life of each tool use over all sheets of a job. */
final class UseFigures {

    private final SheetJob job;
    private final Map<Integer, ToolUse> uses;

    UseFigures(SheetJob job, Map<Integer, ToolUse> uses) {
        this.job = job;
        this.uses = uses;
    }

    void fill() {
        for (SheetRun run : job.runs()) {
            run.hits().forEach(h -> {
                ToolUse use = uses.get(h.use().number());
                use.setHits(use.getHits() + run.layout().runs());
            });
        }
        for (PartPlan part : job.parts()) {
            part.operations().operations().forEach(this::widen);
        }
        job.loading().uses().forEach(u -> uses.get(u.number()).setLifeSharePercent(lifeShare(u.tool(),
                uses.get(u.number()).getHits())));
    }

    private void widen(Operation op) {
        for (ToolUse use : uses.values()) {
            if (use.getTool() != null && use.getTool().getId().equals(op.tool().id())) {
                use.setForceKn(Math.max(use.getForceKn(), op.forceN() / 1000));
                use.setStrippingKn(Math.max(use.getStrippingKn(), op.strippingN() / 1000));
                use.setClearanceMm(op.clearanceMm());
                use.setClearanceWantedMm(op.clearanceNeedMm());
            }
        }
    }

    private double lifeShare(Tool tool, int hits) {
        int perGrind = tool.hitsPerGrind().getOrDefault(job.material().group(), 0);
        return perGrind == 0 ? 0 : 100.0 * hits / (perGrind * job.material().lifeFactor());
    }
}
