// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.motion;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import punchwright.engine.holding.SheetHit;
import punchwright.engine.press.Times;
import punchwright.engine.sequence.ChangeKind;
import punchwright.engine.sequence.RunMetric;
import punchwright.engine.sequence.SequencedHit;
import punchwright.engine.tooling.ToolUse;

/**
 * A time in s that no order of the same hits on the same sides of the sheet can beat. It is the sum of
 * <ul>
 * <li>loading, unloading and parts taken off;</li>
 * <li>repositions that the hits' spread along x needs at least, ceil(spread / travel) - 1, and turning over once where
 * hits lie on both sides;</li>
 * <li>strokes and travel: a run is a path through all hits and a path is a spanning tree, so the least spanning tree under
 * the machine's own time from hit to hit bounds them; each side of the sheet has its own tree;</li>
 * <li>tool changes: the run is repeated, so the tools are met by a closed walk. A closed walk without its dearest change
 * still joins all tools; so it is at least the least spanning tree of changes and its dearest branch once more.</li>
 * </ul>
 * Instead of the last two, a tree whose branches hold change and travel together is taken where that is larger.
 * Source: spanning trees as bounds on Hamiltonian paths, any text on combinatorial optimisation.
 */
final class TimeBound {

    private final MotionJob job;
    private final RunMetric metric;
    private final Times times;
    private final List<List<SheetHit>> sides;

    private TimeBound(MotionJob job) {
        this.job = job;
        this.metric = new RunMetric(job.machine());
        this.times = job.machine().times();
        this.sides = Stream.of(side(false), side(true)).filter(s -> !s.isEmpty()).toList();
    }

    static double seconds(MotionJob job) {
        TimeBound b = new TimeBound(job);
        return b.fixedS() + Math.max(b.trees(b.metric::seconds), b.trees(b.metric::secondsWithoutChange) + b.changesS());
    }

    private double fixedS() {
        double repositions = sides.stream().mapToDouble(this::repositions).sum();
        return times.loadS() + times.unloadS() + job.partsRemoved() * times.partRemovalS()
                + repositions * times.repositionS() + Math.max(0, sides.size() - 1) * times.turnOverS();
    }

    private double trees(SpanningTree.Weight<SheetHit> weight) {
        return sides.stream().mapToDouble(s -> metric.singleS() + SpanningTree.of(s, weight).length()).sum();
    }

    private double changesS() {
        Map<Integer, ToolUse> tools = new LinkedHashMap<>();
        sides.forEach(s -> s.forEach(h -> tools.putIfAbsent(h.use().number(), h.use())));
        return SpanningTree.of(List.copyOf(tools.values()), this::changeS).closed();
    }

    private double changeS(ToolUse from, ToolUse to) {
        return metric.changeS(ChangeKind.between(from, to));
    }

    private List<SheetHit> side(boolean turned) {
        return job.sequence().hits().stream().filter(h -> turned(h) == turned).map(SequencedHit::hit).toList();
    }

    private boolean turned(SequencedHit hit) {
        return job.holdings().holdings().get(hit.holding()).clamps().turned();
    }

    private double repositions(List<SheetHit> hits) {
        double from = hits.stream().mapToDouble(h -> h.at().x()).min().orElseThrow();
        double to = hits.stream().mapToDouble(h -> h.at().x()).max().orElseThrow();
        return Math.max(0, Math.ceil((to - from) / job.machine().travelXMm() - 1e-9) - 1);
    }
}
