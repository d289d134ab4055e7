// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names that spreadsheets take (ISO/IEC 29500-1, 18.17.2.5), and builders that refuse what they cannot name. */
class CellNamesTest {

    @ParameterizedTest
    @ValueSource(strings = {"A1", "ab12", "XFD1048576", "R1C1", "r", "C", "R12", "c5", "TRUE", "false", "", "1a", "a b", "a-b",
            "_a"})
    void refusesWhatASpreadsheetReadsOtherwise(String name) {
        assertThrows(IllegalArgumentException.class, () -> CellNames.check(name));
    }

    @ParameterizedTest
    @ValueSource(strings = {"M_L1_total_lot", "H_rate", "ABCD12", "L1_quantity", "R_labour", "Rate1x"})
    void takesUsualNames(String name) {
        assertEquals(name, CellNames.check(name));
    }

    @Test
    void makesNamesFromIds() {
        assertEquals("T_RD_5_2_price", CellNames.of("T", "RD-5.2", "price"));
        assertEquals("S_Groesse_mass", CellNames.of("", "S", "Größe", "mass"));
        assertThrows(IllegalArgumentException.class, () -> CellNames.of("A1"));
    }

    @Test
    void builderRefusesDoubleUnknownAndUnworkable() {
        CostSheetBuilder b = new CostSheetBuilder("t", "EUR");
        b.input("In_a", "a", "EUR", "g", 1, "test");
        assertTrue(message(() -> b.input("IN_A", "a", "EUR", "g", 1, "test")).contains("stands twice"));
        assertTrue(message(() -> b.formula("Out_b", "b", "EUR", "g", Formulas.ref("In_c"), "")).contains("In_c"));
        assertTrue(message(() -> b.formula("Out_b", "b", "EUR", "g", Formulas.div(Formulas.ref("In_a"), Formulas.num(0)), ""))
                .contains("In_a/0"));
        assertTrue(message(() -> b.input("In_d", "d", "EUR", "g", Double.NaN, "")).contains("enter a number"));
        assertEquals(1, b.build().cells().size());
    }

    private static String message(org.junit.jupiter.api.function.Executable work) {
        return assertThrows(IllegalArgumentException.class, work).getMessage();
    }
}
