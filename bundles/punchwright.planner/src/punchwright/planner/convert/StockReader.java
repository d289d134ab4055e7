// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.planning.StockGroup;
import punchwright.model.shop.StockSheet;

/** Stock for the engine, grouped by material and thickness. What can be ordered has no limit of quantity. */
public final class StockReader {

    /** Stands for "as many as needed" of a sheet that can be ordered. */
    public static final int AS_MANY_AS_NEEDED = 1_000_000;

    private record Key(String material, double thicknessMm) {
    }

    private StockReader() {
    }

    public static List<StockGroup> read(List<StockSheet> stock) {
        Map<Key, List<SheetOffer>> groups = new LinkedHashMap<>();
        for (StockSheet s : stock) {
            if (s.getMaterial() != null && (s.isOrderable() || s.getQuantity() > 0)) {
                groups.computeIfAbsent(new Key(s.getMaterial().getId(), s.getThicknessMm()), k -> new ArrayList<>())
                        .add(new SheetOffer(s.getId(), s.getLengthMm(), s.getWidthMm(), s.getPricePerPiece(),
                                s.isOrderable() ? AS_MANY_AS_NEEDED : s.getQuantity(), s.isRemnant()));
            }
        }
        List<StockGroup> list = new ArrayList<>();
        groups.forEach((key, offers) -> list.add(new StockGroup(key.material(), key.thicknessMm(), offers)));
        return list;
    }
}
