// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.WayOut;
import punchwright.engine.press.Machine;

/**
 * All that is weighed for one part: its features in units that are made together, the candidates of each, and a typed reason for
 * each that has none.
 */
final class PartWays {

    private final ToolingJob job;
    private final ChoiceWeights weights;
    private final ToolWishes wishes;
    private final ToolLimits limits;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Unit> units = new ArrayList<>();
    private final List<List<Candidate>> candidates = new ArrayList<>();
    private final WhyNot whyNot;
    private PartGuard guard;

    PartWays(ToolingJob job, ChoiceWeights weights, ToolWishes wishes, WaysMemory memory) {
        this(job, weights, wishes, new ToolLimits(job, wishes.forbidden(), memory), new HashMap<>(), memory, new HashMap<>());
    }

    private PartWays(ToolingJob job, ChoiceWeights weights, ToolWishes wishes, ToolLimits limits,
            Map<String, List<Candidate>> alone, WaysMemory memory, Map<String, List<WayOut>> waysOut) {
        this.job = job;
        this.weights = weights;
        this.wishes = wishes;
        this.limits = limits;
        whyNot = new WhyNot(job, limits, waysOut);
        Machine m = job.machine();
        if (!job.thicknessFits()) {
            findings.add(Finding.of(ToolingReason.THICKNESS, "part " + job.features().part(), job.thicknessMm(), m.name(),
                    m.minThicknessMm(), m.maxThicknessMm()).with(NearestWay.ofSheet(job)));
            return;
        }
        List<Unit> wanted = ClusterUnits.group(Unit.of(job.features()), limits.usable(), job.rules(), memory);
        Candidates ways = new Candidates(job, wanted, limits.usable(), weights, alone, memory);
        wanted.forEach(unit -> weigh(unit, ways));
        guard = ways.guard();
    }

    /** Those of all parts of an order; parts that may use the same tools share the work for openings that are alike. */
    static List<PartWays> of(List<OrderPart> parts, ChoiceWeights weights) {
        Map<Set<String>, ToolLimits> limits = new HashMap<>();
        Map<Set<String>, Map<String, List<Candidate>>> alone = new HashMap<>();
        Map<Set<String>, Map<String, List<WayOut>>> waysOut = new HashMap<>();
        return parts.stream().map(p -> {
            Set<String> forbidden = p.wishes().forbidden();
            return new PartWays(p.job(), weights, p.wishes(), limits.computeIfAbsent(forbidden, f -> new ToolLimits(p.job(), f)),
                    alone.computeIfAbsent(forbidden, f -> new HashMap<>()), new WaysMemory(),
                    waysOut.computeIfAbsent(forbidden, f -> new HashMap<>()));
        }).toList();
    }

    ToolingJob job() {
        return job;
    }

    List<List<Candidate>> candidates() {
        return candidates;
    }

    /** The choice as operations with all findings. */
    OperationList operations(int[] chosen) {
        if (guard == null) {
            return new OperationList(List.of(), 0, findings);
        }
        List<Finding> all = new ArrayList<>(findings);
        List<WayOut> more = null;
        for (int i = 0; i < candidates.size(); i++) {
            if (chosen[i] < 0 && !candidates.get(i).isEmpty()) {
                more = more == null ? moreOnHand() : more;
                all.add(Finding.of(ToolingReason.ON_HAND, subject(units.get(i).feature()), candidates.get(i).size()).with(more));
            }
        }
        return new OperationsOf(job, units, candidates, chosen, all).list(guard);
    }

    private List<WayOut> moreOnHand() {
        return job.elsewhere().asked() ? MoreOnHand.of(candidates, new HitTime(job.machine(), weights).changeSeconds(), weights)
                : List.of();
    }

    List<FeatureWays> comparison(int[] chosen) {
        return guard == null ? List.of() : new Comparison(job, limits, weights).ways(units, candidates, chosen);
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
            findings.add(whyNot.reason(unit.feature()));
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
