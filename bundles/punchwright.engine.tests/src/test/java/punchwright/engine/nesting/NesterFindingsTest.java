// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;

/** Each refusal names the object, the value with its unit and the way out. */
class NesterFindingsTest {

    private static Finding only(Nesting nesting, NestingReason reason) {
        List<Finding> found = nesting.findings().stream().filter(f -> f.reason() == reason).toList();
        assertEquals(1, found.size(), nesting.findings().toString());
        return found.get(0);
    }

    @Test
    void partLargerThanEverySheet() {
        Finding f = only(Nester.nest(Jobs.job(List.of(Jobs.part("Wide", 1985, 100, 1, 5, 0.0, 90.0)),
                List.of(Jobs.sheet("S", 2000, 1000, 40, 9)), 10, 80)), NestingReason.PART_TOO_LARGE);
        assertTrue(f.isError());
        assertEquals("part Wide", f.subject());
        assertTrue(f.message().contains("1985 x 100 mm") && f.message().contains("1980 x 910 mm"), f.message());
        assertTrue(f.remedy().contains("2005 x 190 mm"), f.remedy());
    }

    /** 45 pieces a sheet (grid count in the validation test), 3 sheets on hand, 200 ordered: 65 missing, 2 more sheets. */
    @Test
    void stockShort() {
        Nesting n = Nester.nest(Jobs.job(List.of(Jobs.part("A", 200, 150, 200, 10, 0.0)),
                List.of(Jobs.sheet("S", 2000, 1000, 40, 3)), 10, 80));
        Finding f = only(n, NestingReason.STOCK_SHORT);
        assertTrue(f.message().startsWith("Stock runs out: 65 of 200 pieces of part A"), f.message());
        assertTrue(f.remedy().startsWith("Order 2 more sheets of S"), f.remedy());
        assertEquals(3, n.layouts().get(0).runs());
    }

    /** 2000 x 1000 x 1.5 mm of steel weighs 23.55 kg (7.85 kg/dm3, EN 10025 mass basis). */
    @Test
    void sheetTooHeavy() {
        NestingJob job = new NestingJob(List.of(Jobs.part("A", 200, 150, 1, 10, 0.0)),
                List.of(Jobs.sheet("S", 2000, 1000, 40, 3)), 10, 80, 4000, 1500, 23.5, Jobs.STEEL_1_5_KG_PER_MM2, 1000, 1);
        Nesting n = Nester.nest(job);
        assertTrue(only(n, NestingReason.SHEET_HEAVY).message().contains("weighs 23.55 kg; the machine takes 23.5 kg"));
        assertTrue(only(n, NestingReason.NO_SHEET).isError());
        assertTrue(n.layouts().isEmpty());
    }

    @Test
    void emptyStock() {
        Nesting n = Nester.nest(Jobs.job(List.of(Jobs.part("A", 200, 150, 1, 10, 0.0)), List.of(), 10, 80));
        assertTrue(only(n, NestingReason.NO_SHEET).remedy().contains("10000 x 3000 mm"));
    }

    @Test
    void remnantIsReported() {
        Nesting n = Nester.nest(Jobs.job(List.of(Jobs.part("A", 200, 150, 5, 10, 0.0)),
                List.of(Jobs.sheet("S", 2000, 1000, 40, 3)), 10, 80));
        assertTrue(only(n, NestingReason.REMNANT_LEFT).message().contains("1780 x 1000 mm"));
    }

    @Test
    void meaninglessInputIsRefused() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> Nester.nest(Jobs.job(
                List.of(Jobs.part("A", 10, 10, 0, 1, 0.0)), List.of(), 0, 0))).getMessage().contains("part A: quantity is 0"));
        assertThrows(IllegalArgumentException.class, () -> Nester.nest(Jobs.job(
                List.of(Jobs.part("A", 10, 10, 1, Double.NaN, 0.0)), List.of(), 0, 0)));
    }

    @Test
    void everyReasonHasTextsInBothLanguages() {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            ResourceBundle texts = ResourceBundle.getBundle("punchwright.engine.nesting.findings", locale);
            for (NestingReason reason : NestingReason.values()) {
                assertTrue(texts.containsKey(reason.code() + ".message"), reason.code());
                assertTrue(texts.containsKey(reason.code() + ".remedy"), reason.code());
            }
        }
    }
}
