// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import punchwright.engine.holding.SheetHit;
import punchwright.engine.press.AxisMotion;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Times;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolUse;

/**
 * The machine's own time from one hit to the next: tool change, then both axes at once while the tool turns, then
 * settling, then the stroke. Two neighbouring nibbling or slitting hits, or hits along a bead of one tool at a pitch up to the machine's
 * largest nibbling pitch take one period of the nibbling rate, or the move or turn where that is longer, but never
 * more than a single hit would take. The time is the same both ways, but it is no straight-line distance.
 *
 * <p>Kinematics: see {@link AxisMotion}. A tool change and the move follow each other and the tool is turned to its
 * first angle during the change: common practice, no source.
 */
public final class RunMetric {

    private final Machine machine;
    private final Times times;

    public RunMetric(Machine machine) {
        this.machine = machine;
        this.times = machine.times();
    }

    /** Time in s from the end of {@code from} to the end of {@code to}, both in the same holding. */
    public double seconds(SheetHit from, SheetHit to) {
        ChangeKind change = ChangeKind.between(from.use(), to.use());
        double move = moveS(from, to);
        if (change != ChangeKind.NONE) {
            return changeS(change) + move + singleS();
        }
        double travel = Math.max(move, turnS(from, to));
        return nibbles(from, to) ? Math.min(periodS(travel), travel + singleS()) : travel + singleS();
    }

    /** The same time without a tool change. */
    public double secondsWithoutChange(SheetHit from, SheetHit to) {
        return seconds(from, to) - changeS(ChangeKind.between(from.use(), to.use()));
    }

    /** A floor on the time of any two hits so far apart, in s; grows with |dx| and |dy|. */
    public double leastSeconds(double dxMm, double dyMm) {
        double travel = AxisMotion.seconds(machine, dxMm, dyMm);
        double reachMm = times.nibblingMaxPitchMm() + 1e-9;
        boolean near = times.nibblingPerMin() > 0 && dxMm * dxMm + dyMm * dyMm <= reachMm * reachMm;
        return near ? Math.min(periodS(travel), travel + singleS()) : travel + singleS();
    }

    /** The same time part by part. */
    public Step step(SheetHit from, SheetHit to) {
        ChangeKind change = ChangeKind.between(from.use(), to.use());
        double move = moveS(from, to);
        double turn = change == ChangeKind.NONE ? Math.max(0, turnS(from, to) - move) : 0;
        if (nibbles(from, to) && change == ChangeKind.NONE && periodS(move + turn) <= move + turn + singleS()) {
            return new Step(change, 0, 0, 0, 0, periodS(move + turn), true);
        }
        return new Step(change, changeS(change), move, turn, times.settlingS(), times.strokeS(), false);
    }

    /** A hit that needs no move: settling and stroke, in s. */
    public double singleS() {
        return times.settlingS() + times.strokeS();
    }

    /** Time of a tool change in s. */
    public double changeS(ChangeKind change) {
        return switch (change) {
            case NONE -> 0;
            case INSERT -> times.insertChangeS();
            case AUTOMATIC -> times.toolChangeS();
            case HAND -> times.handChangeS();
        };
    }

    private double moveS(SheetHit from, SheetHit to) {
        return AxisMotion.seconds(machine, to.at().x() - from.at().x(), to.at().y() - from.at().y());
    }

    private double turnS(SheetHit from, SheetHit to) {
        ToolUse use = to.use();
        if (!use.turning() || use.tool().shape() == ToolShape.ROUND || times.turnDegPerS() <= 0) {
            return 0;
        }
        double turn = Math.abs(to.angleDeg() - from.angleDeg()) % 360;
        return Math.min(turn, 360 - turn) / times.turnDegPerS();
    }

    private boolean nibbles(SheetHit from, SheetHit to) {
        boolean bead = to.use().tool().shape() == ToolShape.ROLLER && to.operation() == from.operation()
                && to.placement() == from.placement() && to.role() == HitRole.FORM && from.role() == HitRole.FORM;
        return (bead || runs(from.role()) && runs(to.role())) && times.nibblingPerMin() > 0
                && from.at().distance(to.at()) <= times.nibblingMaxPitchMm() + 1e-9;
    }

    private static boolean runs(HitRole role) {
        return role == HitRole.NIBBLE || role == HitRole.SLIT;
    }

    private double periodS(double travelS) {
        return Math.max(60 / times.nibblingPerMin(), travelS);
    }
}
