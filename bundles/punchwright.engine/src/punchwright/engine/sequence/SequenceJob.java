// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.List;

import punchwright.engine.holding.HoldingPlan;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.press.Machine;

/** Input: the machine, every hit on the sheet, the holdings they are made in, and the sheet's thickness in mm. */
public record SequenceJob(Machine machine, List<SheetHit> hits, HoldingPlan holdings, long workLimit, long seed,
        double thicknessMm) {

    /** A sheet so thin that only what the tools' records say keeps forms clear. */
    public SequenceJob(Machine machine, List<SheetHit> hits, HoldingPlan holdings, long workLimit, long seed) {
        this(machine, hits, holdings, workLimit, seed, 0);
    }
}
