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

    /**
     * Qg 10-12 and slots as perforators print them: 69.44 % and, 5 x 20 in 10 x 25, 37.85 % (0.215 for 1 - pi/4; from memory).
     */
    @Test
    void sharesOfSquareAndLongHoles() {
        assertEquals(69.44, OpenArea.squareSquarePercent(10, 12), 0.005);
        assertEquals(69.44, OpenArea.squareStaggeredPercent(10, 12), 0.005);
        assertEquals(37.85, OpenArea.obroundPercent(5, 20, 10, 25), 0.01);
        // The same slot, two in a field of 16 x 50 [formula read at a perforator's, from memory].
        assertEquals(23.66, 2 * OpenArea.obroundPercent(5, 20, 16, 50), 0.005);
        assertEquals(30.68, OpenArea.roundDiagonalPercent(5, 8), 0.005);
        // A slot no longer than wide is a round hole: 78.54 w^2 / p^2.
        assertEquals(30.68, OpenArea.obroundPercent(5, 5, 8, 8), 0.005);
        // Plane geometry: hexagon 0.8660 w^2 in a field of 0.8660 p^2.
        assertEquals(100 * 0.8660254 * 36 / (0.8660254 * 64), OpenArea.hexagonStaggered60Percent(6, 8), 1e-9);
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
        assertThrows(IllegalArgumentException.class, () -> OpenArea.obroundPercent(5, 4, 10, 25));
        assertThrows(IllegalArgumentException.class, () -> OpenArea.obroundPercent(5, 25, 10, 25));
        assertThrows(IllegalArgumentException.class, () -> OpenArea.hexagonStaggered60Percent(8, 8));
    }
}
