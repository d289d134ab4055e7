// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.press.Machine;

/**
 * Chooses the tools and hits that make one part: the stage's entry point.
 *
 * <p>Input: features, material, thickness, machine, tools and holders owned, shop rules. Result: operations in part
 * coordinates, how far hits reach beyond the part, and findings: an error with a typed reason for each feature that cannot be
 * made, warnings and notes. The same input gives the same result.
 */
public final class ToolChoice {

    private final ToolingJob job;
    private final ChoiceWeights weights;
    private final ToolWishes wishes;
    private final ToolLimits limits;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Unit> units = new ArrayList<>();
    private final List<List<Candidate>> candidates = new ArrayList<>();

    private ToolChoice(ToolingJob job, ChoiceWeights weights, ToolWishes wishes) {
        this.job = job;
        this.weights = weights;
        this.wishes = wishes;
        limits = new ToolLimits(job, wishes.forbidden());
    }

    public static OperationList choose(ToolingJob job) {
        return choose(job, ChoiceWeights.USUAL);
    }

    public static OperationList choose(ToolingJob job, ChoiceWeights weights) {
        return choose(job, weights, ToolWishes.NONE);
    }

    /** The choice under the engineer's wishes. */
    public static OperationList choose(ToolingJob job, ChoiceWeights weights, ToolWishes wishes) {
        return new ToolChoice(job, weights, wishes).run(false).operations();
    }

    /** The choice with its cost, without alternatives and reasons: for those who ask often. */
    public static ToolWeighing price(ToolingJob job, ChoiceWeights weights, ToolWishes wishes) {
        return new ToolChoice(job, weights, wishes).run(false);
    }

    /** The choice with all alternatives and a reason for every tool passed over, under the engineer's wishes. */
    public static ToolWeighing weigh(ToolingJob job, ChoiceWeights weights, ToolWishes wishes) {
        return new ToolChoice(job, weights, wishes).run(true);
    }

    private ToolWeighing run(boolean withWays) {
        Machine m = job.machine();
        if (job.thicknessMm() < m.minThicknessMm() - 1e-9 || job.thicknessMm() > m.maxThicknessMm() + 1e-9) {
            findings.add(Finding.of(ToolingReason.THICKNESS, "part " + job.features().part(), job.thicknessMm(), m.name(),
                    m.minThicknessMm(), m.maxThicknessMm()));
            return new ToolWeighing(new OperationList(List.of(), 0, findings), List.of(), 0, 0);
        }
        List<Unit> wanted = ClusterUnits.group(Unit.of(job.features()), limits.usable(), job.rules());
        Candidates ways = new Candidates(job, wanted, limits.usable(), weights);
        wanted.forEach(unit -> weigh(unit, ways));
        Selection.Result result = new Selection(candidates, new HitTime(m, weights).changeSeconds(), weights).choose();
        for (int i = 0; i < candidates.size(); i++) {
            if (result.chosen()[i] < 0 && !candidates.get(i).isEmpty()) {
                findings.add(Finding.of(ToolingReason.ON_HAND, subject(units.get(i).feature())));
            }
        }
        OperationList operations = new OperationsOf(job, units, candidates, result.chosen(), findings).list(ways.guard());
        List<FeatureWays> all = withWays ? new Comparison(job, limits, weights).ways(units, candidates, result.chosen())
                : List.of();
        return new ToolWeighing(operations, all, result.cost(), result.bound());
    }

    /** Adds the unit with its candidates; edges that cannot be made together are tried one by one. */
    private void weigh(Unit unit, Candidates ways) {
        List<Candidate> list = pinned(unit, ways.of(unit));
        if (list.isEmpty() && unit.members().size() > 1) {
            unit.split().forEach(u -> weigh(u, ways));
            return;
        }
        units.add(unit);
        candidates.add(list);
        if (list.isEmpty()) {
            findings.add(new WhyNot(job, limits).reason(unit.feature()));
        }
    }

    private List<Candidate> pinned(Unit unit, List<Candidate> list) {
        List<String> pins = unit.members().stream().map(f -> wishes.pinned().get(f.number())).filter(id -> id != null).toList();
        List<Candidate> kept = list.stream().filter(c -> pins.stream()
                .allMatch(id -> c.pieces().stream().anyMatch(p -> p.tool().id().equals(id)))).toList();
        if (kept.isEmpty() && !list.isEmpty() && unit.members().size() == 1) {
            findings.add(Finding.at(unit.feature().center(), ToolingReason.PIN, subject(unit.feature()), String.join(", ",
                    pins)));
            return list;
        }
        return kept;
    }

    private String subject(Feature feature) {
        return FeatureNames.subject(job.features().part(), feature);
    }
}
