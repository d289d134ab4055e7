// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.press.AxisMotion;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Times;

/** Estimate of the press time of hits in the order given; the exact time comes from the motion stage. */
final class HitTime {

    private final Machine machine;
    private final ChoiceWeights weights;

    HitTime(Machine machine, ChoiceWeights weights) {
        this.machine = machine;
        this.weights = weights;
    }

    ChoiceWeights weights() {
        return weights;
    }

    double seconds(List<PartHit> hits) {
        Times times = machine.times();
        double total = single(weights.approachMm(), 0, times);
        for (int i = 1; i < hits.size(); i++) {
            double dx = hits.get(i).at().x() - hits.get(i - 1).at().x();
            double dy = hits.get(i).at().y() - hits.get(i - 1).at().y();
            double turn = Math.abs(Math.IEEEremainder(hits.get(i).angleDeg() - hits.get(i - 1).angleDeg(), 360));
            boolean nibbles = turn < AngleFit.TOLERANCE_DEG && Math.hypot(dx, dy) <= times.nibblingMaxPitchMm()
                    && times.nibblingPerMin() > 0;
            total += nibbles ? 60 / times.nibblingPerMin()
                    : Math.max(single(dx, dy, times), times.turnDegPerS() > 0 ? turn / times.turnDegPerS() : 0);
        }
        return total;
    }

    private double single(double dx, double dy, Times times) {
        return AxisMotion.seconds(machine, dx, dy) + times.settlingS() + times.strokeS();
    }

    /** Seconds of one tool change, shared among the parts. */
    double changeSeconds() {
        return machine.times().toolChangeS() / weights.partsPerChange();
    }
}
