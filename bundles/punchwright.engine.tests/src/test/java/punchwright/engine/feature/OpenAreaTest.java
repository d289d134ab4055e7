// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Validation: tables of perforators by ISO 7805 and DIN 24041 print these shares for common hole and pitch sizes. */
class OpenAreaTest {

    @Test
    void sharesOfCommonFields() {
        assertEquals(35.43, OpenArea.roundStaggered60Percent(5, 8), 0.005);
        assertEquals(32.65, OpenArea.roundStaggered60Percent(3, 5), 0.005);
        assertEquals(40.31, OpenArea.roundStaggered60Percent(10, 15), 0.005);
        assertEquals(30.68, OpenArea.roundSquarePercent(5, 8), 0.005);
        assertEquals(28.27, OpenArea.roundSquarePercent(3, 5), 0.005);
        assertEquals(34.91, OpenArea.roundSquarePercent(10, 15), 0.005);
        assertEquals(39.0625, OpenArea.squareSquarePercent(5, 8), 1e-9);
    }

    @Test
    void holesForEachSquareMetre() {
        assertEquals(1_154_700, OpenArea.holesPerM2Staggered60(1), 1);
        assertEquals(1_000_000, OpenArea.holesPerM2Square(1), 1e-6);
    }

    @Test
    void aPitchBelowTheHoleIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> OpenArea.roundSquarePercent(8, 8));
        assertThrows(IllegalArgumentException.class, () -> OpenArea.roundSquarePercent(Double.NaN, 8));
    }
}
