// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why something the engineer keeps cannot be given to the engine. */
public enum InputReason implements Reason {
    LINE_WITHOUT_ITEM("INPUT-LINE-WITHOUT-ITEM"),
    ASSEMBLY_CYCLE("INPUT-ASSEMBLY-CYCLE"),
    PART_WITHOUT_SHAPE("INPUT-PART-WITHOUT-SHAPE"),
    PART_WITHOUT_MATERIAL("INPUT-PART-WITHOUT-MATERIAL"),
    MANY_PARTS_IN_DRAWING("INPUT-MANY-PARTS-IN-DRAWING"),
    DRAWING_OUTSIDE("INPUT-DRAWING-OUTSIDE");

    private final String code;

    InputReason(String code) {
        this.code = code;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }
}
