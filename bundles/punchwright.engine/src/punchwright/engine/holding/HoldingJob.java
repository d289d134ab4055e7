// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.List;

import punchwright.engine.press.Machine;

/** Input: the machine, the sheet's size in mm and every hit on it. */
public record HoldingJob(Machine machine, double sheetLengthMm, double sheetWidthMm, List<SheetHit> hits, double thicknessMm) {

    /** A sheet so thin that only what the tools' records say keeps forms clear. */
    public HoldingJob(Machine machine, double sheetLengthMm, double sheetWidthMm, List<SheetHit> hits) {
        this(machine, sheetLengthMm, sheetWidthMm, hits, 0);
    }
}
