// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

/** How the holes of a perforated field lie to each other (terms of ISO 7805 and DIN 24041). */
public enum HoleArrangement {
    /** Rows and columns with equal pitch. */
    SQUARE(1, 0),
    /** Rows shifted by half a pitch, pitch x sin 60 degrees apart. */
    STAGGERED_60(Math.sqrt(3) / 2, 0.5),
    /** Rows shifted by half a pitch, half a pitch apart. */
    STAGGERED_45(0.5, 0.5);

    /** Distance of the rows as a share of the pitch. */
    final double rowStep;
    /** Shift of every second row as a share of the pitch. */
    final double shift;

    HoleArrangement(double rowStep, double shift) {
        this.rowStep = rowStep;
        this.shift = shift;
    }
}
