// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Validation: symmetry of plane shapes. */
class AngleFitTest {

    private final Tool free = Shop.rectangle(50, 5);
    private final Tool quarter = Shop.with(free, AngleFreedom.QUARTER, 0, 1);
    private final Tool fixed = Shop.with(free, AngleFreedom.FIXED, 90, 1);

    @Test
    void freeToolsNeedAPlaceThatTurns() {
        assertEquals(33, AngleFit.angleDeg(free, true, 33).orElseThrow());
        assertTrue(AngleFit.angleDeg(free, false, 33).isEmpty());
        assertEquals(90, AngleFit.angleDeg(free, false, 270).orElseThrow());
    }

    @Test
    void keysGiveQuarterTurns() {
        assertEquals(90, AngleFit.angleDeg(quarter, true, 90).orElseThrow());
        assertTrue(AngleFit.angleDeg(quarter, true, 45).isEmpty());
    }

    @Test
    void fixedToolsRepeatWithTheirSymmetry() {
        assertEquals(90, AngleFit.angleDeg(fixed, true, 270).orElseThrow());
        assertTrue(AngleFit.angleDeg(fixed, true, 0).isEmpty());
        assertTrue(AngleFit.angleDeg(Shop.with(Shop.rectangle(10, 10), AngleFreedom.FIXED, 0, 1), false, 270).isPresent());
        assertTrue(AngleFit.angleDeg(Shop.with(Shop.round(10), AngleFreedom.FIXED, 0, 1), false, 17).isPresent());
    }

    @Test
    void anglesNearAFullPeriodAreZero() {
        assertEquals(0, AngleFit.canonicalDeg(179.999, 2));
        assertEquals(0, AngleFit.canonicalDeg(360, 1));
        assertEquals(30, AngleFit.canonicalDeg(210, 2));
        assertTrue(AngleFit.same(359.995, 0, 1));
    }
}
