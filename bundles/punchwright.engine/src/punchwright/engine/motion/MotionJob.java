// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.motion;

import punchwright.engine.holding.HoldingPlan;
import punchwright.engine.press.Machine;
import punchwright.engine.sequence.Sequence;

/** Input: machine, holdings, the ordered hits of one sheet, and the number of parts taken off by hand. */
public record MotionJob(Machine machine, HoldingPlan holdings, Sequence sequence, int partsRemoved) {
}
