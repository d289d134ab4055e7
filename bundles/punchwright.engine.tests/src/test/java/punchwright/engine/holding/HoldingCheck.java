// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Envelope;

import punchwright.engine.press.Clamps;
import punchwright.engine.tooling.Tool;

/**
 * Decides whether a holding plan keeps the machine's rules, without the planner's code: each hit exactly once, in reach
 * along and across, clear of every clamp by the dead zone, clamps on the sheet, on the carriage, apart and unmoved on it, no
 * empty holding. Knows tools whose box is length x width at quarter turns.
 */
final class HoldingCheck {

    private static final double EPS = 1e-5;

    private final HoldingJob job;
    private final List<String> faults = new ArrayList<>();

    private HoldingCheck(HoldingJob job) {
        this.job = job;
    }

    /** Everything wrong, in words. Hits in {@code unmade} must be in no holding. */
    static List<String> faults(HoldingJob job, HoldingPlan plan, List<Integer> unmade) {
        HoldingCheck check = new HoldingCheck(job);
        check.once(plan, unmade);
        plan.holdings().forEach(check::holding);
        return check.faults;
    }

    private void once(HoldingPlan plan, List<Integer> unmade) {
        Map<Integer, Integer> times = new LinkedHashMap<>();
        plan.holdings().forEach(h -> h.hitIds().forEach(id -> times.merge(id, 1, Integer::sum)));
        for (SheetHit hit : job.hits()) {
            if (times.getOrDefault(hit.id(), 0) != (unmade.contains(hit.id()) ? 0 : 1)) {
                faults.add("hit " + hit.id() + " made " + times.getOrDefault(hit.id(), 0) + " times");
            }
        }
        if (plan.holdings().stream().anyMatch(h -> h.hitIds().isEmpty())) {
            faults.add("empty holding");
        }
        for (Holding h : plan.holdings()) {
            double move = h.clamps().clampCentersMm().get(0) - h.clamps().reachFromMm();
            double first = plan.holdings().get(0).clamps().clampCentersMm().get(0)
                    - plan.holdings().get(0).clamps().reachFromMm();
            if (Math.abs(move - first) > EPS) {
                faults.add("clamp moved on the carriage");
            }
        }
    }

    private void holding(Holding holding) {
        clamps(holding.clamps());
        for (SheetHit hit : job.hits()) {
            if (holding.hitIds().contains(hit.id())) {
                hit(hit, holding.clamps());
            }
        }
    }

    private void clamps(ClampArrangement a) {
        Clamps c = job.machine().clamps();
        double before = Double.NEGATIVE_INFINITY;
        for (double center : a.clampCentersMm()) {
            double u = center - a.reachFromMm();
            if (u < c.minCenterMm() - EPS || u > c.maxCenterMm() + EPS) {
                faults.add("clamp off the carriage at " + u);
            }
            if (center - c.widthMm() / 2 < -EPS || center + c.widthMm() / 2 > job.sheetLengthMm() + EPS) {
                faults.add("clamp off the sheet at " + center);
            }
            if (center - before < Math.max(c.minSpacingMm(), c.widthMm()) - EPS) {
                faults.add("clamps too near");
            }
            before = center;
        }
        if (Math.abs(a.reachToMm() - a.reachFromMm() - job.machine().travelXMm()) > EPS) {
            faults.add("reach is not the travel");
        }
    }

    private void hit(SheetHit hit, ClampArrangement a) {
        double x = a.turned() ? job.sheetLengthMm() - hit.at().x() : hit.at().x();
        double y = a.turned() ? job.sheetWidthMm() - hit.at().y() : hit.at().y();
        if (x < a.reachFromMm() - EPS || x > a.reachToMm() + EPS
                || y > Math.min(job.machine().travelYMm(), job.machine().throatDepthMm()) + EPS) {
            faults.add("hit " + hit.id() + " out of reach");
        }
        Tool tool = hit.use().tool();
        boolean upright = hit.angleDeg() % 180 != 0;
        double dx = (upright ? tool.widthMm() : tool.lengthMm()) / 2;
        double dy = (upright ? tool.lengthMm() : tool.widthMm()) / 2;
        Clamps c = job.machine().clamps();
        Envelope kept = new Envelope(x - dx, x + dx, y - dy, y + dy);
        kept.expandBy(c.deadZoneMm() - EPS);
        for (double center : a.clampCentersMm()) {
            if (kept.intersects(new Envelope(center - c.widthMm() / 2, center + c.widthMm() / 2, 0, c.depthMm()))) {
                faults.add("hit " + hit.id() + " under a clamp");
            }
        }
    }
}
