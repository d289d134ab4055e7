// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.check;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** What may be wrong with a layout. Arguments of each in the order of the texts in findings.properties. */
public enum LayoutReason implements Reason {
    /** Two parts overlap. */
    OVERLAP,
    /** A part reaches over the sheet's edge. */
    OUTSIDE_SHEET,
    /** A part lies nearer to the sheet's edge than the margin. */
    EDGE,
    /** Two parts lie nearer to each other than the web. */
    WEB,
    /** A part lies in an opening of another whose waste is no piece to make it from, or too near to the opening's edge. */
    OPENING,
    /** A part, or a hit on it, comes into the clamp strip. */
    CLAMP_ZONE,
    /** A part is turned or mirrored as it may not be. */
    ANGLE,
    /** More or fewer pieces than asked for. */
    COUNT,
    /** More sheets than on hand, or a sheet that is not offered. */
    STOCK,
    /** A sheet that the machine does not take. */
    MACHINE,
    /** Two parts side by side on a bar. */
    BAR,
    /** A remnant that is not free, or not large enough to keep. */
    REMNANT,
    /** A layout without a run or without a part. */
    EMPTY,
    /** A part that is not in the job. */
    UNKNOWN_PART;

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }
}
