// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.List;

import punchwright.engine.tooling.ToolUse;

/**
 * All runs of one tool and one kind of work in one holding.
 *
 * @param level  for forms: how many others must be made before, one after the other, since they would come too near; 0 for cuts
 */
record ToolGroup(WorkKind kind, int level, ToolUse use, List<HitRun> runs) {

    /** How far its forms stand, mm, up positive; 0 for cuts and what stands nowhere. */
    double standsMm() {
        return use.tool().standsMm();
    }

    /** Largest size of the opening that one hit makes, in mm. */
    double sizeMm() {
        return Math.max(use.tool().lengthMm(), use.tool().widthMm());
    }
}
