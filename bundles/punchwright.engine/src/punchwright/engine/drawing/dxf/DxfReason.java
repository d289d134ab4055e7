// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** What can be the matter with a DXF file. Texts: findings.properties of this package. */
public enum DxfReason implements Reason {
    EMPTY(Severity.ERROR), NOT_DXF(Severity.ERROR), UNREADABLE(Severity.ERROR), TOO_MANY_CURVES(Severity.ERROR),
    /** Arguments: line, what was lost. */
    ENDS_EARLY(Severity.WARNING),
    NO_END_MARK(Severity.NOTE), AFTER_END_MARK(Severity.NOTE),
    /** Arguments: line of the first, number of them. */
    BAD_CODE(Severity.WARNING),
    /** Arguments: entity type, line, text that is no number. */
    BAD_NUMBER(Severity.WARNING),
    /** Arguments: number, types. */
    DEGENERATE(Severity.WARNING),
    BAD_SPLINE(Severity.WARNING),
    /** Arguments: types with their number. */
    NOT_CUT_TYPES(Severity.NOTE), UNKNOWN_TYPES(Severity.WARNING),
    PAPER_SPACE(Severity.NOTE),
    BLOCK_MISSING(Severity.WARNING), BLOCK_CYCLE(Severity.WARNING), BLOCK_DEPTH(Severity.WARNING),
    BLOCK_EXTERNAL(Severity.WARNING),
    /** Arguments: name. */
    TEXT_REPLACED(Severity.WARNING);

    private final Severity severity;

    DxfReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
