// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

import punchwright.engine.nesting.NestingCosts;
import punchwright.engine.nesting.SheetOffer;

/**
 * Sheets in stock of one material and thickness.
 *
 * @param materialId  id of the material
 * @param thicknessMm thickness
 * @param offers      the sheets
 * @param costs       what decides between layouts beside the price of the sheets
 */
public record StockGroup(String materialId, double thicknessMm, List<SheetOffer> offers, NestingCosts costs) {

    /** The price of the sheets decides. */
    public StockGroup(String materialId, double thicknessMm, List<SheetOffer> offers) {
        this(materialId, thicknessMm, offers, NestingCosts.SHEETS_ONLY);
    }

    public StockGroup {
        offers = List.copyOf(offers);
    }
}
