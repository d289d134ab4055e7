// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.finding.WayOut;
import punchwright.engine.finding.WayOut.Kind;
import punchwright.engine.press.DieClearance;
import punchwright.engine.press.Machine;

/**
 * A job and a tool in it, to be changed and asked again.
 *
 * @param job  what is made, of which sheet, on which machine
 * @param tool the tool that is changed; null where none is
 */
record Trial(ToolingJob job, Tool tool) {

    /** With all that the way out changes; what concerns neither sheet nor machine nor this tool stays. */
    Trial with(WayOut way) {
        Trial changed = switch (way.kind()) {
            case THINNER, THICKER -> new Trial(job.at(way.value()), tool);
            case MATERIAL -> new Trial(job.in(job.elsewhere().materials().stream().filter(m -> m.id().equals(way.id()))
                    .findFirst().orElseThrow()), tool);
            case MACHINE -> new Trial(job.on(job.elsewhere().machines().stream().filter(m -> m.id().equals(way.id()))
                    .findFirst().orElseThrow()), tool);
            case SHEAR -> new Trial(job, changed(tool.clearancesTotalMm(), ShearKind.ROOF, way.value(), tool.onHand(),
                    tool.hitsSinceGrind()));
            case DIE -> new Trial(job, changed(List.of(way.value()), tool.shear(), tool.shearHeightMm(), tool.onHand(),
                    tool.hitsSinceGrind()));
            case NEW_TOOL -> new Trial(job, changed(tool.clearancesTotalMm(), tool.shear(), tool.shearHeightMm(),
                    (int) way.value(), 0));
            default -> this;
        };
        for (WayOut second : way.and()) {
            changed = changed.with(second);
        }
        return changed;
    }

    /** A new one of the tool. */
    WayOut fresh() {
        return new WayOut(Kind.NEW_TOOL, 1, tool.id(), tool.name());
    }

    /** The die that the sheet needs, to 0.01 mm. */
    WayOut die() {
        return WayOut.of(Kind.DIE, dieMm(job));
    }

    static double dieMm(ToolingJob job) {
        return Math.rint(100 * DieClearance.totalMm(job.material(), job.thicknessMm())) / 100;
    }

    /** The machine, with what its strongest place for the tool carries. */
    WayOut on(Machine machine) {
        double strongest = tool == null ? 0 : new Seats(machine, job.holders()).strongestN(
                ToolFootprint.circumscribedDiameterMm(tool));
        return new WayOut(Kind.MACHINE, strongest / 1000, machine.id(), machine.name());
    }

    private Tool changed(List<Double> clearances, ShearKind shear, double shearMm, int onHand, long hitsSinceGrind) {
        return new Tool(tool.id(), tool.name(), tool.shape(), tool.lengthMm(), tool.widthMm(), tool.cornerRadiusMm(),
                tool.freedom(), tool.fixedAngleDeg(), clearances, shear, shearMm, tool.price(), tool.grindsLeft(),
                tool.grindCost(), tool.hitsPerGrind(), hitsSinceGrind, onHand, tool.formHeightMm(), tool.cluster(),
                tool.freeContour(), tool.room());
    }
}
