// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Validation of the roll-up on an order worked out on paper, and properties that hold for any order. */
class OrderCostTest {

    private static final double EXACT = 1e-9;

    private static CostSheet sheet() {
        return OrderCost.calculate(CostFixture.job());
    }

    /** Worked on paper: 10 sheets at 40 less 60 kg scrap at 0.5 is 370, half each; 1 h machine, half each; see the fixture. */
    @Test
    void costKindsOfFirstLineOnPaper() {
        CostSheet s = sheet();
        double[] expected = {185.00, 0, 30.00, 9.00, 36.00, 1.60, 1.00, 0, 63.11, 325.71, 32.57, 358.28};
        for (CostKind kind : CostKind.values()) {
            assertEquals(expected[kind.ordinal()], s.value(kind.lotCell("", 1)), EXACT, kind.name());
        }
        assertEquals(296.10, s.value("M_L1_production_cost_lot"), EXACT);
        assertEquals(1.85, s.value("M_L1_material_piece"), EXACT);
        assertEquals(3.2571, s.value("M_L1_total_piece"), EXACT);
    }

    /** On paper: as line 1 with 4.00 + 10.00 for bending; surcharges 18.50 + 15.00 + 24.81 + 6.20. */
    @Test
    void costOfBentLineAndOrderOnPaper() {
        CostSheet s = sheet();
        assertEquals(14.00, s.value("M_L2_secondary_lot"), EXACT);
        assertEquals(341.11, s.value("M_L2_total_lot"), EXACT);
        assertEquals(666.82, s.value("M_order_total"), EXACT);
        assertEquals(1.0, s.value("M_order_run_hours"), EXACT);
    }

    /** On paper: once (21 * 1.5 + 15) * 1.1 = 51.15, each (325.71 - 51.15) / 100 = 2.7456. */
    @Test
    void costAgainstQuantityOnPaper() {
        CostSheet s = sheet();
        assertEquals(600.27, s.value("M_L1_lot1_total"), EXACT);
        assertEquals(3.0014, s.value("M_L1_lot1_piece"), EXACT);
        assertEquals(188.43, s.value("M_L1_lot2_total"), EXACT);
    }

    /** On paper: 5 % lost raises 185.00, 30.00, 9.00, 1.60, 1.00 to 194.25, 31.50, 9.45, 1.68, 1.05; set-up stays. */
    @Test
    void piecesLostRaiseWhatIsSpentOnPieces() {
        CostSheet s = OrderCost.calculate(CostFixture.job(Locale.ENGLISH, "", 5));
        assertEquals(194.25, s.value("M_L1_material_lot"), EXACT);
        assertEquals(31.50, s.value("M_L1_machine_lot"), EXACT);
        assertEquals(9.45, s.value("M_L1_labour_lot"), EXACT);
        assertEquals(1.68, s.value("M_L1_tool_wear_lot"), EXACT);
        assertEquals(36.00, s.value("M_L1_set_up_lot"), EXACT);
    }

    @Test
    void partsOfEveryTotalAddUpAsPrinted() {
        CostSheet s = OrderCost.calculate(withOddQuantities());
        for (int line = 1; line <= 2; line++) {
            int l = line;
            assertEquals(cents(s.value(CostKind.TOTAL.lotCell("", l)), 2),
                    CostKind.parts().stream().mapToLong(k -> cents(s.value(k.lotCell("", l)), 2)).sum());
            assertEquals(cents(s.value(CostKind.TOTAL.pieceCell("", l)), 4),
                    CostKind.parts().stream().mapToLong(k -> cents(s.value(k.pieceCell("", l)), 4)).sum());
        }
        assertEquals(cents(s.value("M_order_total"), 2),
                IntStream.rangeClosed(1, 2).mapToLong(l -> cents(s.value(CostKind.TOTAL.lotCell("", l)), 2)).sum());
    }

    private static CostJob withOddQuantities() {
        CostJob j = CostFixture.job();
        List<CostLine> lines = List.of(
                new CostLine("l1", "A", 97, List.of(new CostLine.Need("a", 1)), List.of(), 0, List.of()),
                new CostLine("l2", "Set", 7, List.of(new CostLine.Need("a", 1), new CostLine.Need("b", 3)),
                        List.of(new CostLine.Purchase("rivet", "Rivet", 0.037, 12)), 1.7, List.of()));
        return new CostJob(j.title(), j.currency(), j.locale(), j.code(), j.machine(), j.rates(), j.works(), j.parts(), lines);
    }

    private static long cents(double value, int digits) {
        return Math.round(value * Math.pow(10, digits));
    }

    @Test
    void whatIsSharedIsSharedCompletely() {
        CostSheet s = OrderCost.calculate(withOddQuantities());
        assertEquals(1.0, s.value("P1_area_share") + s.value("P2_area_share"), EXACT);
        assertEquals(1.0, s.value("P1_time_share") + s.value("P2_time_share"), EXACT);
        assertEquals(1.0, s.value("L1_P1_share") + s.value("L2_P1_share"), EXACT);
        assertEquals(s.value("J1_material"), s.value("P1_material") + s.value("P2_material"), EXACT);
        assertEquals(370.0, s.value("M_L1_material_lot") + s.value("M_L2_material_lot"), 0.01);
        assertEquals(7 * 12 * 0.037, s.value("M_L2_purchased_lot"), 0.005);
    }

    @Test
    void aBiggerLotIsNeverDearerByThePiece() {
        CostSheet s = sheet();
        assertTrue(s.value("M_L1_lot1_piece") < s.value("M_L1_total_piece"));
        assertTrue(s.value("M_L1_total_piece") < s.value("M_L1_lot2_piece"));
    }

    @Test
    void everyFormulaUsesOnlyCellsBeforeItAndGivesItsValueAgain() {
        CostSheet s = OrderCost.calculate(CostFixture.job(Locale.ENGLISH, "P1", 3));
        Map<String, Double> seen = new java.util.LinkedHashMap<>();
        for (CostCell cell : s.cells()) {
            if (!cell.isInput()) {
                assertEquals(cell.value(), cell.formula().evaluate(seen::get), EXACT, cell.name());
            }
            seen.put(cell.name(), cell.value());
        }
        assertTrue(seen.containsKey("P1_M_L1_total_lot") && seen.containsKey("L1_quantity") && seen.containsKey("R_labour"));
    }

    @Test
    void sparePiecesAndMissingFiguresAreFound() {
        CostJob j = withOddQuantities();
        SheetWork bare = new SheetWork("DC01, 2 mm", "dc01", 0, 1, 5, List.of(new SheetRun("st-1", "sheet", 0, 20, 360, 10, 0)),
                List.of(new ToolPrice("rd-5", "Round 5", 100, 0, 4, 15, 0)));
        CostSheet s = OrderCost.calculate(new CostJob(j.title(), j.currency(), j.locale(), j.code(), j.machine(), j.rates(),
                List.of(bare), j.parts(), List.of(j.lines().get(0), j.lines().get(1))));
        List<String> codes = s.findings().stream().map(f -> f.code()).toList();
        assertEquals(List.of("COST-SHEET-PRICE", "COST-TOOL-LIFE", "COST-SPARE-PIECES"), codes);
        assertEquals(0.0, s.value("M_L1_tool_wear_lot"));
    }

    @Test
    void contradictoryJobsAreRefusedWithTheWayOut() {
        CostJob j = CostFixture.job();
        assertTrue(refusal(new CostJob("t", "EUR", j.locale(), "A-1", j.machine(), j.rates(), j.works(), j.parts(), j.lines()))
                .contains("letters and digits"));
        assertTrue(refusal(new CostJob("t", "EUR", j.locale(), "", j.machine(), j.rates(), j.works(), j.parts(),
                List.of(j.lines().get(0)))).contains("belongs to no line"));
        CostLine none = new CostLine("l", "Plate A", 0, List.of(new CostLine.Need("a", 1)), List.of(), 0, List.of());
        assertTrue(refusal(new CostJob("t", "EUR", j.locale(), "", j.machine(), j.rates(), j.works(), j.parts(), List.of(none)))
                .contains("quantity 0"));
    }

    private static String refusal(CostJob job) {
        return assertThrows(IllegalArgumentException.class, () -> OrderCost.calculate(job)).getMessage();
    }

    @Test
    void textsHaveTheSameKeysAndPlaceholdersInBothLanguages() throws Exception {
        for (String base : List.of("cells", "findings")) {
            Properties en = load(base + ".properties");
            Properties de = load(base + "_de.properties");
            assertEquals(en.keySet(), de.keySet());
            for (Object key : en.keySet()) {
                assertEquals(places(en.getProperty((String) key)), places(de.getProperty((String) key)), (String) key);
            }
        }
        CostSheet german = OrderCost.calculate(CostFixture.job(Locale.GERMAN, "", 0));
        assertEquals("Selbstkosten", german.cell("M_L1_total_lot").orElseThrow().label());
        assertFalse(german.cells().stream().anyMatch(c -> c.label().isBlank()));
        assertEquals(sheet().cells().stream().map(CostCell::name).toList(), german.cells().stream().map(CostCell::name).toList());
    }

    private static Properties load(String name) throws Exception {
        Properties p = new Properties();
        try (var in = OrderCost.class.getResourceAsStream(name)) {
            p.load(in);
        }
        return p;
    }

    private static List<String> places(String text) {
        List<String> found = new ArrayList<>();
        java.util.regex.Pattern.compile("\\{\\d+}").matcher(text).results().forEach(m -> found.add(m.group()));
        return found.stream().sorted().toList();
    }
}
