// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Validation; sources beside each check. */
class FormingForceTest {

    /** Common practice, factor 2: A 50 mm2, Rm 400: 40 kN. */
    @Test
    void coining() {
        assertEquals(40_000, FormingForce.coiningN(50, 400), 1e-9);
    }

    /** Lange; Romanowski (from memory): D 10, H 4, r 1, t 1.5: 5.02. */
    @Test
    void collarCore() {
        assertEquals(5.02, FormingForce.collarCoreMm(10, 4, 1, 1.5), 0.005);
    }

    /** Geometry: head 9.2, hole 4.5: 2.35 deep. */
    @Test
    void countersink() {
        assertEquals(2.35, FormingForce.countersinkDepthMm(9.2, 4.5), 1e-12);
    }

    /** A lance needs its cut and 30 to 50 % more for the form: common practice. */
    @Test
    void lanceLiesBetweenItsBounds() {
        double cut = PunchingForce.flatN(60, 1.5, 320);
        double lance = FormingForce.lanceN(60, 1.5, 320);
        assertTrue(lance >= 1.3 * cut && lance <= 1.5 * cut);
        assertTrue(FormingForce.collarN(8, 4, 1.5, 400) > FormingForce.collarN(8, 5, 1.5, 400));
        assertEquals(2 * FormingForce.embossN(30, 1, 400), FormingForce.embossN(60, 1, 400), 1e-9);
    }
}
