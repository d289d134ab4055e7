// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/**
 * A rectangle of a sheet that no part needs and that is large enough to keep; each run of the layout leaves one.
 *
 * @param layout   index of the layout, from 0
 * @param xMm      lower left corner on the sheet
 * @param yMm      lower left corner on the sheet
 * @param lengthMm along x
 * @param widthMm  along y
 * @param value    of one piece, in the library's currency
 */
public record Remnant(int layout, double xMm, double yMm, double lengthMm, double widthMm, double value) {

    public double areaMm2() {
        return lengthMm * widthMm;
    }
}
