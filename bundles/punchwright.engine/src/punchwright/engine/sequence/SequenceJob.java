// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.List;

import punchwright.engine.holding.HoldingPlan;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.press.Machine;

/** Input: the machine, every hit on the sheet, and the holdings they are made in. */
public record SequenceJob(Machine machine, List<SheetHit> hits, HoldingPlan holdings, long workLimit, long seed) {
}
