// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import punchwright.engine.nesting.NestingCosts;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.planning.StockGroup;
import punchwright.model.shop.Material;
import punchwright.model.shop.StockKind;
import punchwright.model.shop.StockSheet;

/** Stock for the engine, grouped by material and thickness. What can be ordered has no limit of quantity. */
public final class StockReader {

    /** Stands for "as many as needed" of a sheet that can be ordered. */
    public static final int AS_MANY_AS_NEEDED = 1_000_000;

    private record Key(String material, double thicknessMm) {
    }

    private StockReader() {
    }

    /** Sheets of whose layouts the price alone decides. */
    public static List<StockGroup> read(List<StockSheet> stock) {
        return read(stock, material -> NestingCosts.SHEETS_ONLY);
    }

    /** Sheets with what decides between their layouts, by material. */
    public static List<StockGroup> read(List<StockSheet> stock, Function<Material, NestingCosts> costs) {
        Map<String, Material> materials = new LinkedHashMap<>();
        Map<Key, List<SheetOffer>> groups = new LinkedHashMap<>();
        for (StockSheet s : stock) {
            if (s.getMaterial() != null && (s.isOrderable() || s.getQuantity() > 0)) {
                materials.put(s.getMaterial().getId(), s.getMaterial());
                groups.computeIfAbsent(new Key(s.getMaterial().getId(), s.getThicknessMm()), k -> new ArrayList<>())
                        .add(offer(s));
            }
        }
        List<StockGroup> list = new ArrayList<>();
        groups.forEach((key, offers) -> list.add(new StockGroup(key.material(), key.thicknessMm(), offers,
                costs.apply(materials.get(key.material())))));
        return list;
    }

    /** One stock item. */
    public static SheetOffer offer(StockSheet s) {
        return new SheetOffer(s.getId(), s.getLengthMm(), s.getWidthMm(), price(s),
                s.isOrderable() ? AS_MANY_AS_NEEDED : s.getQuantity(), s.isRemnant(), s.getKind() == StockKind.BAR);
    }

    /** Price of one piece: as entered, else by mass from the price of the material. */
    private static double price(StockSheet s) {
        double massKg = s.getLengthMm() * s.getWidthMm() * s.getThicknessMm() * 1e-6
                * (s.getMaterial() == null ? 0 : s.getMaterial().getDensityKgPerDm3());
        return s.getPricePerPiece() > 0 || s.getMaterial() == null ? s.getPricePerPiece()
                : massKg * s.getMaterial().getPricePerKg();
    }
}
