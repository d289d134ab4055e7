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
 * @param remnant   whether it is a remnant: used before other sheets where that does not make the material dearer
 */
public record SheetOffer(String id, double lengthMm, double widthMm, double price, int quantity, boolean remnant) {
}
