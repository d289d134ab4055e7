// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import punchwright.model.plan.Hit;
import punchwright.model.plan.Holding;
import punchwright.model.plan.Layout;
import punchwright.model.plan.Placement;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanPackage.Literals;
import punchwright.model.plan.PlanStatus;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.TimeShare;
import punchwright.model.plan.ToolUse;
import punchwright.model.work.Part;
import punchwright.model.work.Want;

/** Rules for plans: whether the record agrees with itself, the order and the library. */
final class PlanRules {

    private PlanRules() {
    }

    static void addTo(Rules.Rows rows) {
        rows.warning("PW-M-140", Plan.class, (p, r) -> {
            int now = LibraryRules.lastRevision(LibraryRules.libraryOf(p.getMachine()));
            if (now > 0 && p.getLibraryRevision() != now) {
                r.add(Literals.PLAN__LIBRARY_REVISION, p.getLibraryRevision(), now);
            }
        });
        rows.error("PW-M-147", Plan.class, PlanRules::quantities);
        tools(rows);
        sheets(rows);
    }

    private static void tools(Rules.Rows rows) {
        rows.error("PW-M-141", ToolUse.class, (u, r) -> {
            if (u.getForceLimitKn() > 0 && u.getForceKn() > u.getForceLimitKn()) {
                r.add(Literals.TOOL_USE__FORCE_KN, u.getForceKn(), u.getForceLimitKn());
            }
        });
        rows.error("PW-M-142", SheetJob.class, PlanRules::balloonsOnce);
        rows.warning("PW-M-143", ToolUse.class, (u, r) -> {
            if (u.getLifeSharePercent() > 100) {
                r.add(Literals.TOOL_USE__LIFE_SHARE_PERCENT, u.getLifeSharePercent());
            }
        });
    }

    private static void balloonsOnce(SheetJob job, Report report) {
        Map<Integer, ToolUse> seen = new HashMap<>();
        for (ToolUse use : job.getToolUses()) {
            ToolUse first = seen.putIfAbsent(use.getBalloon(), use);
            if (first != null) {
                report.on(use, Literals.TOOL_USE__BALLOON, use.getBalloon(), first);
            }
        }
    }

    private static void sheets(Rules.Rows rows) {
        rows.error("PW-M-144", Hit.class, (h, r) -> {
            if (h.eContainer() instanceof Layout l && (h.getXMm() < 0 || h.getYMm() < 0 || h.getXMm() > l.getLengthMm()
                    || h.getYMm() > l.getWidthMm())) {
                r.add(Literals.HIT__XMM, h.getXMm(), h.getYMm(), l.getLengthMm(), l.getWidthMm());
            }
        });
        rows.error("PW-M-145", Holding.class, (h, r) -> {
            double before = Double.NEGATIVE_INFINITY;
            for (double position : h.getClampPositionsMm()) {
                if (position <= before) {
                    r.add(Literals.HOLDING__CLAMP_POSITIONS_MM, position, before);
                }
                before = Math.max(before, position);
            }
        });
        rows.error("PW-M-146", Layout.class, PlanRules::hitsInTime);
        rows.warning("PW-M-148", Layout.class, (l, r) -> {
            double sum = l.getTimes().stream().mapToDouble(TimeShare::getSeconds).sum();
            if (!l.getTimes().isEmpty() && Math.abs(sum - l.getCycleTimeS()) > 0.01) {
                r.add(Literals.LAYOUT__CYCLE_TIME_S, l.getCycleTimeS(), sum);
            }
        });
    }

    private static void hitsInTime(Layout layout, Report report) {
        double before = 0;
        for (Hit hit : layout.getHits()) {
            if (hit.getStartS() < before) {
                report.on(hit, Literals.HIT__START_S, hit.getStartS(), before);
                return;
            }
            before = hit.getStartS();
        }
    }

    /** Pieces on the sheets against pieces that must be made; a plan that says it is not finished is let pass. */
    private static void quantities(Plan plan, Report report) {
        if (plan.getOrder() == null || plan.getStatus() == PlanStatus.DRAFT || plan.getStatus() == PlanStatus.INCOMPLETE) {
            return;
        }
        Map<Part, Integer> ordered = OrderPieces.ordered(plan.getOrder(), l -> l.getWant() == Want.MUST);
        Map<Part, Integer> made = made(plan.getJobs());
        ordered.forEach((part, wanted) -> {
            int pieces = made.getOrDefault(part, 0);
            if (pieces < wanted) {
                report.add(Literals.PLAN__JOBS, part, pieces, wanted);
            }
        });
    }

    private static Map<Part, Integer> made(List<SheetJob> jobs) {
        Map<Part, Integer> made = new HashMap<>();
        for (SheetJob job : jobs) {
            for (Layout layout : job.getLayouts()) {
                for (Placement placement : layout.getPlacements()) {
                    made.merge(placement.getPart(), layout.getRunCount(), Integer::sum);
                }
            }
        }
        return made;
    }
}
