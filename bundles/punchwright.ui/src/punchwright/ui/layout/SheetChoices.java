// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.List;

import punchwright.engine.planning.SheetLayouts;
import punchwright.model.shop.Library;
import punchwright.model.shop.Material;
import punchwright.model.shop.StockSheet;
import punchwright.model.work.KeptLayout;
import punchwright.model.work.Part;

/**
 * What can be chosen for a layout.
 *
 * @param stock stock items of its material and thickness
 * @param webs  webs that planning tries, mm
 * @param parts parts of its material and thickness
 */
record SheetChoices(List<StockSheet> stock, List<Double> webs, List<Part> parts) {

    private static final double SAME_MM = 1e-6;

    /** Without a layout there is nothing to choose. */
    static final SheetChoices NONE = new SheetChoices(List.of(), List.of(), List.of());

    static SheetChoices of(KeptLayout kept, Library library, BenchRows rows, List<PartNeed> needs) {
        return new SheetChoices(
                library.getStock().stream().filter(s -> goesWith(kept, s.getMaterial(), s.getThicknessMm())).toList(),
                rows.sheets(kept).map(SheetLayouts::websMm).orElse(List.of()).stream().filter(w -> w > 0).distinct().toList(),
                needs.stream().map(PartNeed::part).filter(p -> goesWith(kept, p.getMaterial(), p.getThicknessMm())).toList());
    }

    private static boolean goesWith(KeptLayout kept, Material material, double thicknessMm) {
        return material == kept.getMaterial() && Math.abs(thicknessMm - kept.getThicknessMm()) < SAME_MM;
    }
}
