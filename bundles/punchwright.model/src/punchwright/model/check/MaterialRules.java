// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import punchwright.model.shop.ClearanceRule;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.Material;
import punchwright.model.shop.MaterialGroup;
import punchwright.model.shop.ShopPackage.Literals;
import punchwright.model.shop.StockKind;
import punchwright.model.shop.StockSheet;

/** Rules for materials and stock. */
final class MaterialRules {

    /**
     * Densities in kg/dm3 that a group may have, from memory of material tables: steels 7.7 to 8.1, aluminium alloys 2.6 to
     * 2.9.
     */
    private static final Map<MaterialGroup, double[]> DENSITIES = new EnumMap<>(MaterialGroup.class);

    static {
        DENSITIES.put(MaterialGroup.MILD_STEEL, new double[] {7.7, 8.0});
        DENSITIES.put(MaterialGroup.COATED_STEEL, new double[] {7.6, 8.0});
        DENSITIES.put(MaterialGroup.HIGH_STRENGTH_STEEL, new double[] {7.7, 8.0});
        DENSITIES.put(MaterialGroup.STAINLESS_STEEL, new double[] {7.6, 8.1});
        DENSITIES.put(MaterialGroup.ALUMINIUM, new double[] {2.6, 2.9});
        DENSITIES.put(MaterialGroup.COPPER, new double[] {8.7, 9.0});
        DENSITIES.put(MaterialGroup.BRASS, new double[] {8.2, 8.9});
    }

    private MaterialRules() {
    }

    static void addTo(Rules.Rows rows) {
        strength(rows);
        clearance(rows);
        trade(rows);
        stock(rows);
        stockFits(rows);
    }

    private static void strength(Rules.Rows rows) {
        rows.error("PW-M-080", Material.class, (m, r) -> {
            if (m.getTensileMaxMPa() < m.getTensileMinMPa()) {
                r.add(Literals.MATERIAL__TENSILE_MAX_MPA, m.getTensileMaxMPa(), m.getTensileMinMPa());
            }
        });
        rows.warning("PW-M-081", Material.class, (m, r) -> {
            if (m.getShearStrengthMPa() > m.getTensileMaxMPa() || m.getShearStrengthMPa() < 0.5 * m.getTensileMinMPa()) {
                r.add(Literals.MATERIAL__SHEAR_STRENGTH_MPA, m.getShearStrengthMPa(), m.getTensileMinMPa(), m.getTensileMaxMPa());
            }
        });
        rows.warning("PW-M-082", Material.class, (m, r) -> {
            if (isBlank(m.getShearStrengthSource())) {
                r.add(Literals.MATERIAL__SHEAR_STRENGTH_SOURCE, m.getShearStrengthMPa());
            }
        });
        rows.warning("PW-M-085", Material.class, (m, r) -> {
            double[] range = DENSITIES.get(m.getGroup());
            if (m.getDensityKgPerDm3() < range[0] || m.getDensityKgPerDm3() > range[1]) {
                r.add(Literals.MATERIAL__DENSITY_KG_PER_DM3, m.getDensityKgPerDm3(), m.getGroup(), range[0], range[1]);
            }
        });
    }

    private static void clearance(Rules.Rows rows) {
        rows.warning("PW-M-083", Material.class, (m, r) -> {
            double percent = m.getClearanceTotalPercent();
            if (m.getClearanceRule() == ClearanceRule.PERCENT && (percent < 5 || percent > 40)) {
                r.add(Literals.MATERIAL__CLEARANCE_TOTAL_PERCENT, percent);
            }
        });
        rows.warning("PW-M-084", Material.class, (m, r) -> {
            double factor = m.getClearanceFactor();
            if (m.getClearanceRule() == ClearanceRule.OEHLER_KAISER && (factor < 0.005 || factor > 0.035)) {
                r.add(Literals.MATERIAL__CLEARANCE_FACTOR, factor);
            }
        });
    }

    private static void trade(Rules.Rows rows) {
        rows.note("PW-M-086", Material.class, MaterialRules::priceAge);
        rows.warning("PW-M-087", Material.class, (m, r) -> {
            if (m.getScrapValuePerKg() > m.getPricePerKg()) {
                r.add(Literals.MATERIAL__SCRAP_VALUE_PER_KG, m.getScrapValuePerKg(), m.getPricePerKg());
            }
        });
        rows.error("PW-M-088", Material.class, (m, r) -> {
            double before = 0;
            for (double thickness : m.getThicknessesMm()) {
                if (thickness <= before) {
                    r.add(Literals.MATERIAL__THICKNESSES_MM, thickness, before);
                }
                before = Math.max(before, thickness);
            }
        });
        rows.warning("PW-M-089", Material.class, (m, r) -> {
            if (isBlank(m.getGrade()) || isBlank(m.getStandard())) {
                r.add(isBlank(m.getGrade()) ? Literals.MATERIAL__GRADE : Literals.MATERIAL__STANDARD);
            }
        });
    }

    /** Against the date of the last library revision, not against the clock: same input, same result. */
    private static void priceAge(Material material, Report report) {
        Library library = LibraryRules.libraryOf(material);
        LocalDate priced = GeneralRules.parse(material.getPriceDate());
        if (library == null || library.getRevisions().isEmpty() || priced == null) {
            return;
        }
        LocalDate now = GeneralRules.parse(library.getRevisions().get(library.getRevisions().size() - 1).getDate());
        if (now != null && priced.plusYears(1).isBefore(now)) {
            report.add(Literals.MATERIAL__PRICE_DATE, material.getPriceDate(), now.toString());
        }
    }

    private static void stock(Rules.Rows rows) {
        rows.warning("PW-M-090", StockSheet.class, (s, r) -> {
            if (s.getMaterial() != null && !s.getMaterial().getThicknessesMm().isEmpty()
                    && !s.getMaterial().getThicknessesMm().contains(s.getThicknessMm())) {
                r.add(Literals.STOCK_SHEET__THICKNESS_MM, s.getThicknessMm(), s.getMaterial());
            }
        });
        rows.error("PW-M-093", StockSheet.class, (s, r) -> {
            if (s.getPricePerPiece() == 0 && s.getMaterial() != null && s.getMaterial().getPricePerKg() == 0) {
                r.add(Literals.STOCK_SHEET__PRICE_PER_PIECE, s.getMaterial());
            }
        });
        rows.warning("PW-M-094", StockSheet.class, (s, r) -> {
            if (s.getQuantity() == 0 && !s.isOrderable()) {
                r.add(Literals.STOCK_SHEET__QUANTITY);
            }
        });
        rows.warning("PW-M-095", StockSheet.class, (s, r) -> {
            if (s.isRemnant() && s.isOrderable()) {
                r.add(Literals.STOCK_SHEET__ORDERABLE);
            }
        });
        rows.warning("PW-M-096", StockSheet.class, (s, r) -> {
            if (s.getKind() == StockKind.BAR && s.getWidthMm() > s.getLengthMm()) {
                r.add(Literals.STOCK_SHEET__WIDTH_MM, s.getWidthMm(), s.getLengthMm());
            }
        });
    }

    private static void stockFits(Rules.Rows rows) {
        rows.warning("PW-M-091", StockSheet.class, (s, r) -> {
            List<Machine> machines = machinesFor(s);
            double mass = massKg(s);
            double most = machines.stream().mapToDouble(Machine::getMaxSheetMassKg).max().orElse(Double.MAX_VALUE);
            if (mass > most) {
                r.add(Literals.STOCK_SHEET__THICKNESS_MM, mass, most);
            }
        });
        rows.warning("PW-M-092", StockSheet.class, (s, r) -> {
            List<Machine> machines = machinesFor(s);
            if (!machines.isEmpty() && machines.stream().noneMatch(m -> s.getLengthMm() <= m.getLongestSheetMm()
                    && s.getWidthMm() <= Math.max(m.getTravelYMm(), m.getWidestSheetMm()))) {
                r.add(Literals.STOCK_SHEET__LENGTH_MM, s.getLengthMm(), s.getWidthMm());
            }
        });
    }

    private static List<Machine> machinesFor(StockSheet stock) {
        Library library = LibraryRules.libraryOf(stock);
        return library == null ? List.of() : library.getMachines();
    }

    /** Mass of a sheet, kg: mm3 are 1e-6 dm3. */
    static double massKg(StockSheet stock) {
        double density = stock.getMaterial() == null ? 0 : stock.getMaterial().getDensityKgPerDm3();
        return stock.getLengthMm() * stock.getWidthMm() * stock.getThicknessMm() * 1e-6 * density;
    }

    static boolean isBlank(String text) {
        return text == null || text.isBlank();
    }
}
