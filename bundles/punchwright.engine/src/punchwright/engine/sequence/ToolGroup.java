// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.List;

import punchwright.engine.tooling.ToolUse;

/** All runs of one tool and one kind of work in one holding. */
record ToolGroup(WorkKind kind, ToolUse use, List<HitRun> runs) {

    /** Largest size of the opening that one hit makes, in mm. */
    double sizeMm() {
        return Math.max(use.tool().lengthMm(), use.tool().widthMm());
    }
}
