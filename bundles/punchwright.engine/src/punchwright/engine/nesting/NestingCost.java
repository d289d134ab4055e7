// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/**
 * What an order costs by its layouts, in the library's currency.
 *
 * @param material price of the sheets
 * @param remnants value of the remnants kept
 * @param scrap    value of the scrap: sheets less parts less remnants
 * @param handling loading and unloading of the sheets
 * @param machine  machine time for the contours of the parts
 * @param optional value of the pieces made of parts that may be made or fill up
 */
public record NestingCost(double material, double remnants, double scrap, double handling, double machine, double optional) {

    public static final NestingCost NONE = new NestingCost(0, 0, 0, 0, 0, 0);

    /** Material less remnants and scrap, plus handling and machine. */
    public double total() {
        return material - remnants - scrap + handling + machine;
    }

    /** The total less the value of optional pieces: what the choice of layouts makes least. */
    public double net() {
        return total() - optional;
    }
}
