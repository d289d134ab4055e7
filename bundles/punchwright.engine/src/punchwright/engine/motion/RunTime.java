// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.motion;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.Holding;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.press.AxisMotion;
import punchwright.engine.press.Times;
import punchwright.engine.sequence.ChangeKind;
import punchwright.engine.sequence.RunMetric;
import punchwright.engine.sequence.SequencedHit;
import punchwright.engine.sequence.Step;
import punchwright.engine.tooling.HitRole;

/**
 * The run of one sheet as a list of named stretches of time without gaps.
 *
 * <p>Loading ends, and turning over ends, with the first hit's place under the tool; a reposition leaves the sheet where
 * it is, after a move where the sequence asks for one. The same sheet is run again and again, so the first tool has to come back when the last one differs.
 */
public final class RunTime {

    private final MotionJob job;
    private final RunMetric metric;
    private final Times times;
    private final Clock clock = new Clock();

    private RunTime(MotionJob job) {
        this.job = job;
        this.metric = new RunMetric(job.machine());
        this.times = job.machine().times();
    }

    /**
     * Times one sheet.
     *
     * @return events in order, sums by cause in the order of {@link Cause}, the total and a lower bound on it, all in s
     * @throws IllegalArgumentException when a hit names a holding that the plan does not have
     */
    public static Timeline of(MotionJob job) {
        return new RunTime(job).run();
    }

    private Timeline run() {
        clock.add(Cause.LOAD, times.loadS(), -1);
        SheetHit before = null;
        int holding = 0;
        for (SequencedHit next : job.sequence().hits()) {
            SheetHit from = before == null ? null : parked(before, holding, next.holding());
            boolean turned = moveToHolding(holding, next.holding());
            addHit(from, next.hit(), turned);
            before = next.hit();
            holding = next.holding();
        }
        moveToHolding(holding, Math.max(holding, job.holdings().holdings().size() - 1));
        for (int i = 0; i < job.partsRemoved(); i++) {
            clock.add(Cause.PART_REMOVAL, times.partRemovalS(), -1);
        }
        clock.add(Cause.UNLOAD, times.unloadS(), -1);
        return new Timeline(clock.events(), sums(clock.events()), clock.nowS(), TimeBound.seconds(job));
    }

    /** The hit before as the sheet stands after the moves that keep forms from under the hold-down. */
    private SheetHit parked(SheetHit before, int from, int to) {
        SheetHit at = before;
        for (int i = from; i < to; i++) {
            Point park = job.sequence().parks().get(i);
            if (park != null) {
                clock.add(Cause.MOVE, AxisMotion.seconds(job.machine(), park.x() - at.at().x(), park.y() - at.at().y()), -1);
                at = new SheetHit(before.id(), before.use(), park, before.angleDeg(), HitRole.PIERCE, before.operation(),
                        before.placement());
            }
        }
        return at;
    }

    private boolean moveToHolding(int from, int to) {
        boolean turned = false;
        for (int i = from; i < to; i++) {
            boolean turn = holding(i).clamps().turned() != holding(i + 1).clamps().turned();
            clock.add(turn ? Cause.TURN_OVER : Cause.REPOSITION, turn ? times.turnOverS() : times.repositionS(), -1);
            turned |= turn;
        }
        return turned;
    }

    private Holding holding(int index) {
        List<Holding> holdings = job.holdings().holdings();
        if (index < 0 || index >= holdings.size()) {
            throw new IllegalArgumentException("A hit names holding " + index + ", but the plan has " + holdings.size()
                    + " holdings. Order the hits again after the holdings have changed.");
        }
        return holdings.get(index);
    }

    private void addHit(SheetHit before, SheetHit hit, boolean turned) {
        if (before == null) {
            SheetHit last = job.sequence().hits().getLast().hit();
            addChange(ChangeKind.between(last.use(), hit.use()), hit.id());
            addStroke(hit.id());
        } else if (turned) {
            addChange(ChangeKind.between(before.use(), hit.use()), hit.id());
            addStroke(hit.id());
        } else {
            addStep(metric.step(before, hit), hit.id());
        }
    }

    private void addStep(Step step, int hitId) {
        addChange(step.change(), hitId);
        clock.add(Cause.MOVE, step.moveS(), hitId);
        clock.add(Cause.TURN_TOOL, step.turnS(), hitId);
        clock.add(Cause.SETTLE, step.settleS(), hitId);
        clock.add(step.nibbling() ? Cause.NIBBLE : Cause.STROKE, step.strokeS(), hitId);
    }

    private void addStroke(int hitId) {
        clock.add(Cause.SETTLE, times.settlingS(), hitId);
        clock.add(Cause.STROKE, times.strokeS(), hitId);
    }

    private void addChange(ChangeKind change, int hitId) {
        switch (change) {
            case NONE -> { }
            case INSERT -> clock.add(Cause.INSERT_CHANGE, metric.changeS(change), hitId);
            case AUTOMATIC -> clock.add(Cause.TOOL_CHANGE, metric.changeS(change), hitId);
            case HAND -> clock.add(Cause.HAND_CHANGE, metric.changeS(change), hitId);
        }
    }

    private static Map<Cause, Double> sums(List<Event> events) {
        Map<Cause, Double> sums = new EnumMap<>(Cause.class);
        events.forEach(e -> sums.merge(e.cause(), e.durationS(), Double::sum));
        return sums;
    }
}
