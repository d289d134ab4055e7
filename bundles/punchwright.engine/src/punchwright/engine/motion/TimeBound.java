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
import punchwright.engine.sequence.TourBound;
import punchwright.engine.tooling.ToolUse;

/**
 * A time in s that no order of the same hits on the same sides of the sheet can beat. It is the sum of
 * <ul>
 * <li>loading, unloading and parts taken off;</li>
 * <li>repositions that the hits' spread along x needs at least, ceil(spread / travel) - 1, and turning over once where
 * hits lie on both sides;</li>
 * <li>strokes and travel: a run is a path through all hits of each side of the sheet, bounded by one-trees under the machine's
 * own time from hit to hit ({@link TourBound});</li>
 * <li>tool changes: the run is repeated, so the tools are met by a closed walk. A closed walk without its dearest change
 * still joins all tools; so it is at least the least spanning tree of changes and its dearest branch once more.</li>
 * </ul>
 * A share of each change is counted in the steps of the path and the rest in the closed walk; the better of two shares is
 * taken.
 */
final class TimeBound {

    private static final double[] SHARES = {0.25, 1};
    /** Steps times hits: keeps the bound within a fraction of a second. */
    private static final int WORK = 24_000;
    private static final int LEAST_STEPS = 20;
    private static final int MOST_STEPS = 300;

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
        double best = 0;
        for (double share : SHARES) {
            best = Math.max(best, b.paths(share) + (1 - share) * b.changesS());
        }
        return b.fixedS() + best;
    }

    private double fixedS() {
        double repositions = sides.stream().mapToDouble(this::repositions).sum();
        return times.loadS() + times.unloadS() + job.partsRemoved() * times.partRemovalS()
                + repositions * times.repositionS() + Math.max(0, sides.size() - 1) * times.turnOverS();
    }

    private double paths(double changeShare) {
        return sides.stream().mapToDouble(s -> metric.singleS() + path(s, changeShare)).sum();
    }

    private double path(List<SheetHit> hits, double changeShare) {
        double[] x = hits.stream().mapToDouble(h -> h.at().x()).toArray();
        double[] y = hits.stream().mapToDouble(h -> h.at().y()).toArray();
        SheetHit[] all = hits.toArray(SheetHit[]::new);
        int steps = Math.min(WORK / Math.max(1, all.length), MOST_STEPS);
        return TourBound.path(new TourBound.Costs() {
            @Override
            public double cost(int from, int to) {
                return metric.seconds(all[from], all[to])
                        - (1 - changeShare) * metric.changeS(ChangeKind.between(all[from].use(), all[to].use()));
            }

            @Override
            public double least(double dx, double dy) {
                return metric.leastSeconds(dx, dy);
            }
        }, x, y, steps < LEAST_STEPS ? 0 : steps);
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
