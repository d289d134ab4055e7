// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why a drawing gives no part, and what was decided on the way. Texts: findings.properties of this package. */
public enum DrawingReason implements Reason {
    FILE_MISSING(Severity.ERROR), FILE_IS_FOLDER(Severity.ERROR),
    /** Arguments: what the system says. */
    FILE_UNREADABLE(Severity.ERROR),
    /** Arguments: entity types with their numbers. */
    NO_CONTOUR(Severity.ERROR),
    /** Arguments: number of curves, layers. */
    NO_CONTOUR_CUT(Severity.ERROR),
    /** Arguments: number of entities, first entity, its line, its text. */
    NO_CONTOUR_BAD_NUMBERS(Severity.ERROR),
    /** Arguments: number of open chains, x, y of the first in mm, gap in mm. */
    NO_CONTOUR_OPEN(Severity.ERROR),
    /** Arguments: unit taken, size in units, 0 for a usual size or 1 for a small one. */
    UNIT_NOT_STATED(Severity.WARNING),
    /** Arguments: unit taken, 0 for marked metric or 1 for inch based. */
    UNIT_FROM_MEASUREMENT(Severity.NOTE),
    /** Arguments: unit taken, width mm, height mm, 0 for marked metric or 1 for too long. */
    UNIT_DOUBTFUL(Severity.WARNING),
    /** Arguments: x, y of the new origin in drawing units. */
    FAR_FROM_ORIGIN(Severity.NOTE),
    /** Arguments: lowest z, highest z in mm. */
    FLATTENED(Severity.WARNING),
    /** Arguments: number. */
    UPRIGHT(Severity.WARNING),
    /** Arguments: layers with their number of curves. */
    HIDDEN_LAYERS(Severity.NOTE), LAYERS_NOT_CUT(Severity.NOTE),
    /** Arguments: number, types with their number. */
    FILLED_AREAS(Severity.NOTE),
    /** Arguments: diameter of the disc, of the hole around it, x, y in mm. */
    DISC_IN_HOLE(Severity.NOTE),
    /** Arguments: number of lines and arcs. */
    TOO_MANY_PIECES(Severity.ERROR), TOO_LARGE(Severity.ERROR),
    /** Arguments: number, code of the reason. */
    MORE(Severity.NOTE),
    /** Arguments: parameter, value, least, most, unit. */
    PARAMETER_RANGE(Severity.ERROR),
    /** Arguments: what does not fit. */
    PARAMETER_CLASH(Severity.ERROR);

    private final Severity severity;

    DrawingReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
