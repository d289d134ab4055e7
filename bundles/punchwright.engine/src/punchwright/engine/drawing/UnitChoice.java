// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.Objects;
import java.util.Optional;

import punchwright.engine.finding.Finding;

/**
 * The unit of a drawing, how it was found, and what speaks for and against it.
 *
 * @param mmPerUnit   mm of one drawing unit
 * @param source      where it comes from
 * @param ground      why it was guessed, or what makes it doubtful
 * @param widthUnits  width of what is cut, in drawing units
 * @param heightUnits its height, in drawing units
 * @param finding     the same in words; null where nothing is to be said
 */
public record UnitChoice(double mmPerUnit, Source source, Ground ground, double widthUnits, double heightUnits, Finding finding) {

    /** Where the unit comes from. */
    public enum Source {
        /** The reader was told. */
        ASKED_FOR,
        /** The drawing states it ($INSUNITS). */
        STATED,
        /** The drawing is marked metric or inch based ($MEASUREMENT). */
        MARKED,
        /** Nothing is said: guessed from the size. */
        GUESSED
    }

    /** Why. The order is that of the choices in the texts. */
    public enum Ground {
        NONE,
        /** The longer side is a usual size in mm. */
        USUAL_SIZE_IN_MM,
        /** The longer side would be unlikely small in mm. */
        SMALL_IN_MM,
        /** $MEASUREMENT says metric. */
        MARKED_METRIC,
        /** $MEASUREMENT says inch based, and the size fits. */
        MARKED_INCH,
        /** The unit stated would make the part longer than any sheet. */
        LONGER_THAN_ANY_SHEET
    }

    public UnitChoice {
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(ground, "ground");
    }

    /** Whether somebody should look at it. */
    public boolean isDoubtful() {
        return source == Source.GUESSED || source == Source.STATED && ground != Ground.NONE;
    }

    public Optional<Finding> findingIfAny() {
        return Optional.ofNullable(finding);
    }

    /** Width in mm if a drawing unit were so many mm, for offering other units. */
    public double widthMm(double otherMmPerUnit) {
        return widthUnits * otherMmPerUnit;
    }

    public double heightMm(double otherMmPerUnit) {
        return heightUnits * otherMmPerUnit;
    }
}
