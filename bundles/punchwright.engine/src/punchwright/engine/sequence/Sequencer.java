// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import punchwright.engine.finding.Finding;
import punchwright.engine.holding.Holding;
import punchwright.engine.holding.SheetHit;

/** Orders the hits of one sheet holding by holding, tool by tool, and by travel inside each tool. */
public final class Sequencer {

    private final SequenceJob job;
    private final Map<Integer, SheetHit> byId = new HashMap<>();
    private final ToolOrder toolOrder;
    private final OuterOperations outer;
    private final List<SequencedHit> ordered = new ArrayList<>();

    private Sequencer(SequenceJob job, List<PrecedenceRule> rules) {
        this.job = job;
        this.toolOrder = new ToolOrder(new RunMetric(job.machine()), rules);
        this.outer = new OuterOperations(job.hits());
        job.hits().forEach(h -> byId.put(h.id(), h));
    }

    /**
     * Orders by the usual rules.
     *
     * @return every hit that has a holding, once; a hit in no holding is an error among the findings
     */
    public static Sequence order(SequenceJob job) {
        return order(job, PrecedenceRules.USUAL);
    }

    /** Orders by given precedence rules. */
    public static Sequence order(SequenceJob job, List<PrecedenceRule> rules) {
        Sequencer sequencer = new Sequencer(job, rules);
        job.holdings().holdings().forEach(sequencer::addHolding);
        Parking parking = new Parking(job);
        parking.run(sequencer.ordered);
        List<Finding> findings = new ArrayList<>(SequenceCheck.findings(job, rules, sequencer.ordered));
        findings.addAll(parking.findings());
        return new Sequence(sequencer.ordered, findings, parking.parks());
    }

    private void addHolding(Holding holding) {
        List<SheetHit> hits = holding.hitIds().stream().sorted().map(byId::get).filter(Objects::nonNull).toList();
        SequencedHit before = ordered.isEmpty() ? null : ordered.getLast();
        List<ToolGroup> groups = toolOrder.order(Grouping.of(hits, outer, job.thicknessMm()), before == null ? null : before.hit().use());
        SheetHit from = before == null || turnedBetween(before.holding(), holding) ? null : before.hit();
        for (ToolGroup group : groups) {
            long work = (long) ((double) job.workLimit() * group.runs().size() / Math.max(1, job.hits().size()));
            List<HitRun> runs = HitOrder.order(job.machine(), group.runs(), from, work, job.seed());
            for (HitRun run : from == null ? farEndFirst(runs, holding) : runs) {
                run.hits().forEach(h -> ordered.add(new SequencedHit(h, holding.index())));
                from = run.last();
            }
        }
    }

    private boolean turnedBetween(int index, Holding holding) {
        return job.holdings().holdings().stream().filter(h -> h.index() == index)
                .anyMatch(h -> h.clamps().turned() != holding.clamps().turned());
    }

    /** A path that may start anywhere starts at the end that is farther from the clamps. */
    private static List<HitRun> farEndFirst(List<HitRun> runs, Holding holding) {
        if (runs.isEmpty()) {
            return runs;
        }
        double first = runs.getFirst().first().at().y();
        double last = runs.getLast().last().at().y();
        if (holding.clamps().turned() ? first <= last : first >= last) {
            return runs;
        }
        return runs.reversed().stream().map(HitRun::reversed).toList();
    }
}
