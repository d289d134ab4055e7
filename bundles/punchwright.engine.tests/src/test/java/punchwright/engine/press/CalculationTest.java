// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Test;

/** Validation: the telephone questions give the published values of the formulas behind them, and refuse nonsense by name. */
class CalculationTest {

    private static Answer ask(Calculation c, Map<String, Double> in) {
        return c.answer(in, PunchingForceTest.STEEL);
    }

    /** L t tau by hand: 100 x 2 x 320; worn 1.2 of it; 10 % of it; 0.6 of it times t. */
    @Test
    void forceStripAndWork() {
        Map<String, Double> in = Map.of("length", 100.0, "thickness", 2.0);
        assertEquals(64_000, ask(Calculation.FORCE, in).figure("force").value(), 1e-6);
        assertEquals(76_800, ask(Calculation.FORCE, in).figure("worn-force").value(), 1e-6);
        assertEquals(6_400, ask(Calculation.STRIP, in).figure("strip").value(), 1e-6);
        assertEquals(4_826, ask(Calculation.STRIP, in).figure("strip-by-area").value(), 2);
        assertEquals(76.8, ask(Calculation.WORK, in).figure("work").value(), 1e-9);
    }

    /** Without a material: L 314.16, t 2, tau 370: 232 478 N by hand; of a limit of 200 kN 139 % worn. */
    @Test
    void aStrengthAloneIsEnough() {
        Answer a = Calculation.FORCE.answer(Map.of("length", 314.16, "thickness", 2.0, "strength", 370.0, "limit", 200_000.0),
                Basis.of(MaterialGroup.MILD_STEEL));
        assertEquals(232_478.4, a.figure("force").value(), 0.1);
        assertEquals(139.49, a.figure("of-limit").value(), 0.01);
        assertTrue(a.warned());
        assertEquals(PressReason.OVER_LIMIT, a.findings().getFirst().reason());
    }

    @Test
    void shearOnThePunchIsCappedAndSaysSo() {
        Answer a = ask(Calculation.FORCE, Map.of("length", 100.0, "thickness", 2.0, "shear-height", 2.0, "worn", 1.0));
        assertEquals(100 * 2 * 320 * 0.5, a.figure("force").value(), 1e-6);
        assertEquals(0.2754, a.figure("shear-factor-formula").value(), 1e-4);
        assertEquals(PressReason.SHEAR_CAPPED, a.findings().getFirst().reason());
        assertFalse(a.warned(), "a note is no warning");
    }

    /** Plane geometry worked by hand: r 10, h 0.1: pitch 2.821347, R 50 inside 100 and outside 123 hits. */
    @Test
    void nibble() {
        Answer a = ask(Calculation.NIBBLE, Map.of("tool", 20.0, "scallop", 0.1, "radius", 50.0));
        assertEquals(2.821347, a.figure("pitch").value(), 1e-6);
        assertEquals(37, a.figure("hits").value());
        assertEquals(100, a.figure("inside-hits").value());
        assertEquals(123, a.figure("outside-hits").value());
    }

    /** Oehler/Kaiser (from memory) first, since the material chose it: 2 x 0.1131. */
    @Test
    void clearance() {
        assertEquals(0.2263, ask(Calculation.CLEARANCE, Map.of("thickness", 2.0)).results().getFirst().value(), 1e-4);
    }

    /** max(1, 1.0 t, 4 t tau / 1600 = 0.8 t). */
    @Test
    void minimumHole() {
        assertEquals(3.0, ask(Calculation.MINIMUM_HOLE, Map.of("thickness", 3.0)).figure("minimum-hole").value(), 1e-9);
        assertEquals(1.0, ask(Calculation.MINIMUM_HOLE, Map.of("thickness", 0.5)).figure("minimum-hole").value(), 1e-9);
    }

    /** Common practice: stainless factor 1.5, t 3: 4.5 mm where no record says otherwise. */
    @Test
    void minimumHoleOfAGroup() {
        Answer a = Calculation.MINIMUM_HOLE.answer(Map.of("thickness", 3.0, "strength", 300.0),
                Basis.of(MaterialGroup.STAINLESS_STEEL));
        assertEquals(4.5, a.figure("minimum-hole").value(), 1e-9);
    }

    /** Lange (from memory) by hand: M4 in 1.5: core 3.3, mean 4.8, height 2.1: 4.8 - 2 (2.1 - 0.215 - 1.08) = 3.19. */
    @Test
    void collar() {
        Answer a = ask(Calculation.COLLAR, Map.of("thread", 4.0, "thickness", 1.5));
        assertEquals(3.3, a.figure("cut-core").value());
        assertEquals(2.1, a.figure("least-height").value(), 1e-9);
        assertEquals(3.19, a.figure("hole-before").value(), 1e-9);
        assertEquals(PressReason.NO_THREAD, ask(Calculation.COLLAR, Map.of("thread", 7.0, "thickness", 1.5)).findings().getLast()
                .reason());
    }

    @Test
    void inputsAreNamedWhenTheyAreMissingUnknownOrSenseless() {
        for (Calculation c : Calculation.values()) {
            Input needed = c.inputs().stream().filter(i -> i.required()
                    && i.from() == Input.From.NOWHERE).findFirst().orElseThrow();
            String text = assertThrows(IllegalArgumentException.class, () -> ask(c, Map.of())).getMessage();
            assertTrue(text.contains(needed.name()) && text.contains(c.word()), text);
        }
        refused(Map.of("thickness", 2.0, "colour", 1.0), "colour");
        refused(Map.of("thickness", -2.0), "thickness");
        refused(Map.of("thickness", 0.0), "thickness");
        refused(Map.of("thickness", Double.NaN), "thickness");
        refused(Map.of("thickness", Double.POSITIVE_INFINITY), "thickness");
    }

    /** A refusal tells why in both languages. */
    @Test
    void refusalsAreFindings() {
        Map<Calculation, Map<String, Double>> senseless = Map.of(Calculation.NIBBLE, Map.of("tool", 20.0, "scallop", 10.0),
                Calculation.SLIT, Map.of("length", 100.0, "tool", 5.0, "overlap", 5.0), Calculation.COUNTERSINK,
                Map.of("head", 5.0, "hole", 6.0, "thickness", 2.0), Calculation.MULTI_TOOL,
                Map.of("outer", 40.0, "inserts", 12.0, "wall", 20.0), Calculation.FORCE,
                Map.of("length", 100.0, "thickness", 2.0, "punches", 1.5), Calculation.WEB, Map.of("thickness", -1.0));
        senseless.forEach((c, in) -> {
            QuestionException e = assertThrows(QuestionException.class, () -> ask(c, in), c.toString());
            assertTrue(e.getMessage().startsWith(c.word()), e.getMessage());
            for (java.util.Locale l : List.of(java.util.Locale.ENGLISH, java.util.Locale.GERMAN)) {
                assertFalse(e.finding().message(l).isBlank() || e.finding().remedy(l).isBlank(), c.toString());
            }
        });
    }

    private static void refused(Map<String, Double> in, String name) {
        String text = assertThrows(IllegalArgumentException.class, () -> ask(Calculation.CLEARANCE, in)).getMessage();
        assertTrue(text.contains(name), text);
    }

    @Test
    void namesAndSymbolsAreUniqueInAQuestion() {
        Set<String> words = new HashSet<>();
        for (Calculation c : Calculation.values()) {
            assertTrue(words.add(c.word()), c.word());
            assertEquals(c, Calculation.named(c.word()));
            List<String> names = c.inputs().stream().map(Input::name).toList();
            List<String> symbols = c.inputs().stream().map(Input::symbol).toList();
            assertEquals(names.size(), new HashSet<>(names).size(), c.word());
            assertEquals(symbols.size(), new HashSet<>(symbols).size(), c.word());
        }
        assertThrows(IllegalArgumentException.class, () -> Calculation.named("weather"));
    }

    /** Each input, pushed just past either end of its range, gives a finding that names its symbol; inside, none of that kind. */
    @Test
    void outsideItsRangeEveryInputIsTold() {
        for (Calculation c : Calculation.values()) {
            for (Input i : c.inputs()) {
                if (i.quantity() == Quantity.COUNT) {
                    continue;
                }
                assertTrue(i.check(c.word(), i.largest()).isEmpty() && i.check(c.word(), i.least()).isEmpty());
                assertEquals(PressReason.RANGE, i.check(c.word(), 1.001 * i.largest()).getFirst().reason(), c + " " + i.name());
                String text = i.check(c.word(), 1.001 * i.largest()).getFirst().message();
                assertTrue(text.startsWith(i.symbol() + " "), text);
            }
        }
    }

    @Test
    void unitsAreRead() {
        assertEquals(2, Quantity.LENGTH.read("2"));
        assertEquals(50.8, Quantity.LENGTH.read("2in"), 1e-12);
        assertEquals(2, Quantity.LENGTH.read(" 2 mm "));
        assertEquals(118_000, Quantity.FORCE.read("118kN"), 1e-9);
        assertEquals(9806.65, Quantity.FORCE.read("1t"), 1e-9);
        assertEquals(320, Quantity.STRESS.read("320 N/mm2"), 1e-12);
        for (String bad : List.of("", "mm", "2kN", "zwei", "1e400", "NaN", "2 2", "--2", "0x10", "2f")) {
            assertThrows(IllegalArgumentException.class, () -> Quantity.LENGTH.read(bad), bad);
        }
    }
}
