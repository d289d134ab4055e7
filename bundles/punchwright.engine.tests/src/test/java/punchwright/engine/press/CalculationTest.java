// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

/** Validation: the telephone questions give the published values of the formulas behind them. */
class CalculationTest {

    private static List<Figure> ask(Calculation c, Map<String, Double> in) {
        return c.answer(in, PunchingForceTest.STEEL);
    }

    /** L t tau by hand: 100 x 2 x 320; 10 % of it; 0.6 of it times t. */
    @Test
    void force() {
        List<Figure> f = ask(Calculation.FORCE, Map.of("cutLengthMm", 100.0, "thicknessMm", 2.0, "wornFactor", 1.0));
        assertEquals(List.of(64_000.0, 6_400.0, 76.8), f.stream().map(x -> Math.rint(x.value() * 10) / 10).toList());
    }

    /** Plane geometry worked by hand: r 10, h 0.1: pitch 2.821347, R 50 inside 100 and outside 123 hits. */
    @Test
    void nibble() {
        List<Figure> f = ask(Calculation.NIBBLE, Map.of("toolDiameterMm", 20.0, "scallopMm", 0.1, "arcRadiusMm", 50.0));
        assertEquals(2.821347, f.get(0).value(), 1e-6);
        assertEquals(List.of(37.0, 100.0, 123.0), f.subList(1, 4).stream().map(Figure::value).toList());
    }

    /** Oehler/Kaiser (from memory) first, since the material chose it: 2 x 0.1131. */
    @Test
    void clearance() {
        assertEquals(0.2263, ask(Calculation.CLEARANCE, Map.of("thicknessMm", 2.0)).getFirst().value(), 1e-4);
    }

    /** max(1, 1.0 t, 4 t tau / 1600 = 0.8 t). */
    @Test
    void minimumHole() {
        assertEquals(3.0, ask(Calculation.MINIMUM_HOLE, Map.of("thicknessMm", 3.0)).getFirst().value(), 1e-9);
        assertEquals(1.0, ask(Calculation.MINIMUM_HOLE, Map.of("thicknessMm", 0.5)).getFirst().value(), 1e-9);
    }

    @Test
    void strip() {
        List<Figure> f = ask(Calculation.STRIP, Map.of("cutLengthMm", 100.0, "thicknessMm", 2.0));
        assertEquals(6_400, f.get(0).value(), 1e-9);
        assertEquals(4_826, f.get(1).value(), 2);
    }

    @Test
    void inputsAreNamedWhenTheyAreMissingOrUnknown() {
        for (Calculation c : Calculation.values()) {
            String text = assertThrows(IllegalArgumentException.class, () -> ask(c, Map.of())).getMessage();
            assertTrue(text.contains(c.required().getFirst()) && text.contains(c.word()), text);
        }
        String text = assertThrows(IllegalArgumentException.class,
                () -> ask(Calculation.CLEARANCE, Map.of("thicknessMm", 2.0, "colour", 1.0))).getMessage();
        assertTrue(text.contains("colour"), text);
    }
}
