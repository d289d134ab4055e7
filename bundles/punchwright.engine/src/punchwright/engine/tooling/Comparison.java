// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;

/** Alternatives side by side, and why each tool owned takes no part in the chosen way. */
final class Comparison {

    private final ToolingJob job;
    private final ToolLimits limits;
    private final ChoiceWeights weights;
    private final Seats seats;

    Comparison(ToolingJob job, ToolLimits limits, ChoiceWeights weights) {
        this.job = job;
        this.limits = limits;
        this.weights = weights;
        seats = new Seats(job.machine(), job.holders());
    }

    List<FeatureWays> ways(List<Unit> units, List<List<Candidate>> candidates, int[] chosen) {
        List<FeatureWays> all = new ArrayList<>();
        for (int i = 0; i < units.size(); i++) {
            List<Alternative> alternatives = new ArrayList<>();
            for (int c = 0; c < candidates.get(i).size(); c++) {
                alternatives.add(alternative(candidates.get(i).get(c), c == chosen[i]));
            }
            all.add(new FeatureWays(units.get(i).members(), alternatives, passedOver(units.get(i), candidates.get(i),
                    chosen[i])));
        }
        return all;
    }

    private Alternative alternative(Candidate c, boolean chosen) {
        double percent = c.pieces().stream().mapToDouble(p -> forcePercent(p.tool())).max().orElse(0);
        return new Alternative(c.pieces().stream().map(p -> p.tool().tool()).toList(), c.hits(), c.seconds(), c.wear(),
                c.cost(weights), percent, c.reachMm(), chosen, c.why());
    }

    private double forcePercent(UsableTool t) {
        double force = t.forceN() * job.rules().forceReserve();
        double strongest = seats.fitting(ToolFootprint.circumscribedDiameterMm(t.tool()), force).stream()
                .mapToDouble(Seat::forceLimitN).max().orElse(job.machine().pressForceN());
        return 100 * force / Math.min(strongest, job.machine().pressForceN());
    }

    private List<Finding> passedOver(Unit unit, List<Candidate> list, int chosen) {
        List<Finding> reasons = new ArrayList<>();
        Candidate best = chosen < 0 ? null : list.get(chosen);
        for (Tool tool : job.tools()) {
            if (best == null || !uses(best, tool)) {
                reasons.add(reason(unit.feature(), tool, list, best));
            }
        }
        return reasons;
    }

    private static boolean uses(Candidate c, Tool tool) {
        return c.pieces().stream().anyMatch(p -> p.tool().id().equals(tool.id()));
    }

    private Finding reason(Feature f, Tool tool, List<Candidate> list, Candidate best) {
        Finding refusal = limits.refusalWithWays(tool);
        if (refusal != null) {
            return refusal;
        }
        Candidate with = list.stream().filter(c -> uses(c, tool)).findFirst().orElse(null);
        if (with != null && best != null) {
            return Finding.of(ToolingReason.DEARER, tool.name(), with.cost(weights), best.cost(weights), with.hits(),
                    best.hits());
        }
        if (new ExactHit(job.rules()).matches(f, tool)) {
            return Finding.of(ToolingReason.ANGLE, tool.name(), f.angleDeg(), tool.name())
                    .with(limits.anglesOut(tool, f.angleDeg()));
        }
        return Finding.of(ToolingReason.DOES_NOT_FIT, tool.name(), FeatureNames.what(f), tool.lengthMm(), tool.widthMm());
    }
}
