// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/**
 * A sheet in stock.
 *
 * @param id        stock id
 * @param lengthMm  along x
 * @param widthMm   along y
 * @param price     per sheet
 * @param quantity  on hand
 * @param remnant   whether it is a remnant: used before other sheets where that does not make the order dearer
 * @param bar       whether it is a bar or strip: parts lie in one row along it
 */
public record SheetOffer(String id, double lengthMm, double widthMm, double price, int quantity, boolean remnant, boolean bar) {

    /** A sheet, no bar. */
    public SheetOffer(String id, double lengthMm, double widthMm, double price, int quantity, boolean remnant) {
        this(id, lengthMm, widthMm, price, quantity, remnant, false);
    }

    public double areaMm2() {
        return lengthMm * widthMm;
    }
}
