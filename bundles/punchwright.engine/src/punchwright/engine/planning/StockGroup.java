// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

import punchwright.engine.nesting.SheetOffer;

/** Sheets in stock of one material and thickness (mm). */
public record StockGroup(String materialId, double thicknessMm, List<SheetOffer> offers) {

    public StockGroup {
        offers = List.copyOf(offers);
    }
}
