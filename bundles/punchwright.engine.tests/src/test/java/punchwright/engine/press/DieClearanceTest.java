// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

/** Validation against the named books (from memory) and their own limits. */
class DieClearanceTest {

    /** Oehler/Kaiser: t 2, tau 320: 0.1131; t 1.5, tau 600: 0.1162; t 4, tau 408: 0.2874; c 0.005 and 0.035. */
    @Test
    void oehlerKaiser() {
        assertEquals(0.1131, DieClearance.oehlerKaiserPerSideMm(0.01, 2, 320), 1e-4);
        assertEquals(0.1162, DieClearance.oehlerKaiserPerSideMm(0.01, 1.5, 600), 1e-4);
        assertEquals(0.2874, DieClearance.oehlerKaiserPerSideMm(0.01, 4, 408), 1e-4);
        assertEquals(0.0566, DieClearance.oehlerKaiserPerSideMm(0.005, 2, 320), 1e-4);
        assertEquals(0.3960, DieClearance.oehlerKaiserPerSideMm(0.035, 2, 320), 1e-4);
    }

    /** Both branches give the same at 3 mm, for c = 0.01 only. */
    @Test
    void branchesMeetAtThreeMillimetres() {
        for (double tau = 50; tau < 700; tau += 50) {
            double below = DieClearance.oehlerKaiserPerSideMm(0.01, 3, tau);
            assertEquals(below, DieClearance.oehlerKaiserPerSideMm(0.01, 3 + 1e-9, tau), 1e-7);
        }
        double below = DieClearance.oehlerKaiserPerSideMm(0.02, 3, 320);
        assertTrue(Math.abs(below - DieClearance.oehlerKaiserPerSideMm(0.02, 3.0001, 320)) > 0.01);
    }

    /** Groover: a 0.075, t 3.2: 0.24 mm per side. Aluminium a 0.045, t 2: 0.09. */
    @Test
    void allowance() {
        assertEquals(0.24, DieClearance.allowancePerSideMm(0.075, 3.2), 1e-12);
        assertEquals(0.09, DieClearance.allowancePerSideMm(DieClearance.allowance(MaterialGroup.ALUMINIUM), 2), 1e-12);
    }

    /** 20 % of 2 mm in all is 0.40 mm: arithmetic of the shop's custom. */
    @Test
    void percentAndSideBySide() {
        assertEquals(0.40, DieClearance.percentTotalMm(20, 2), 1e-12);
        List<Figure> figures = DieClearance.figures(PunchingForceTest.STEEL, 2);
        assertEquals(3, figures.size());
        assertEquals(2 * 0.1131, figures.getFirst().value(), 2e-4);
        assertEquals(List.of(0.22627, 0.24, 0.4), figures.stream().map(f -> Math.rint(f.value() * 1e5) / 1e5).toList());
    }

    @Test
    void nearestOnHandAndItsEffect() {
        assertEquals(0.3, DieClearance.nearestMm(List.of(0.1, 0.2, 0.3), 0.4));
        assertEquals(0.3, DieClearance.nearestMm(List.of(0.1, 0.3), 0.2));
        assertTrue(Double.isNaN(DieClearance.nearestMm(List.of(), 0.2)));
        assertEquals(PressReason.CLEARANCE_TIGHT, DieClearance.effect("x", 0.2, 0.4).getFirst().reason());
        assertEquals(PressReason.CLEARANCE_WIDE, DieClearance.effect("x", 0.6, 0.4).getFirst().reason());
        assertTrue(DieClearance.effect("x", 0.4, 0.4).isEmpty());
    }

    @Test
    void moreStrengthNeverMeansLessClearance() {
        for (double t = 0.5; t <= 8; t += 0.25) {
            for (double tau = 60; tau < 600; tau += 20) {
                double here = DieClearance.oehlerKaiserPerSideMm(0.01, t, tau);
                assertTrue(here <= DieClearance.oehlerKaiserPerSideMm(0.01, t, tau + 20));
                assertTrue(here <= DieClearance.oehlerKaiserPerSideMm(0.01, t + 0.25, tau));
            }
        }
    }
}
