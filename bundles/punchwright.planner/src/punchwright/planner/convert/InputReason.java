// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why something the engineer keeps cannot be given to the engine. */
public enum InputReason implements Reason {
    LINE_WITHOUT_ITEM,
    ASSEMBLY_CYCLE,
    PART_WITHOUT_SHAPE,
    PART_WITHOUT_MATERIAL,
    MANY_PARTS_IN_DRAWING,
    NO_PART_AT_PLACE,
    DRAWING_OUTSIDE;

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }
}
