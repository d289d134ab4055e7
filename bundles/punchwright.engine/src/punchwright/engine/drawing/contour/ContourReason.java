// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** What is noticed on the way from loose curves to contours. Texts: findings.properties of this package. */
public enum ContourReason implements Reason {
    /** Arguments: number, tolerance mm. */
    SHORT_PIECES(Severity.NOTE),
    /** Arguments: number. */
    DUPLICATES(Severity.WARNING),
    /** Arguments: number. */
    OVERLAPS(Severity.WARNING),
    /** Arguments: widest gap mm, number. */
    GAPS_CLOSED(Severity.NOTE),
    /** One of several repairs, at its place. Arguments: x, y. */
    SHORT_PIECE(Severity.NOTE), DUPLICATE(Severity.NOTE), OVERLAP(Severity.NOTE), SPLIT_PLACE(Severity.NOTE),
    /** Arguments: x, y, gap mm. */
    GAP_CLOSED(Severity.NOTE),
    /** Arguments: x, y, gap mm between the two ends, length mm. */
    OPEN_CHAIN(Severity.WARNING),
    /** Arguments: x, y, gap mm, number of contours inside. */
    OPEN_OUTLINE(Severity.ERROR),
    /** Arguments: x, y, number of ends. */
    BRANCHING(Severity.WARNING),
    /** Arguments: number of splits. */
    SPLIT(Severity.NOTE),
    /** Arguments: x, y. */
    SELF_CROSSING(Severity.ERROR),
    /** Arguments: x, y. */
    CROSSING(Severity.WARNING),
    /** Arguments: x, y. */
    TOUCHING(Severity.NOTE),
    /** Arguments: 0 crossings not looked for, 1 loose lines not compared. */
    TANGLED(Severity.WARNING),
    /** Arguments: number of contours. */
    TANGLED_NESTING(Severity.ERROR);

    private final Severity severity;

    ContourReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
