// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Validation: static payback against published worked examples. */
class PaybackTest {

    /** drtaccounting.com, "Calculation of payback period", April 2009: 20 000 at 5000 a year pays in 4 years. */
    @Test
    void evenInflowsPayInPriceOverInflow() {
        assertEquals(4.0, Payback.years(20_000, 5000, 0), 1e-12);
    }

    /** justaaa.com, accounting question 17168: cost 100 000, net income 60 000, depreciation 20 000: 1.25 years. */
    @Test
    void depreciationIsAddedBackToTheProfit() {
        assertEquals(1.25, Payback.years(100_000, 60_000, 20_000), 1e-12);
    }

    /** petfoodhonesty.com, answer 13061827: cost 223 000, income 107 000, depreciation 16 000: 1.813 years. */
    @Test
    void anotherPublishedAnswerToThreePlaces() {
        assertEquals(1.813, Payback.years(223_000, 107_000, 16_000), 5e-4);
    }

    @Test
    void nothingFlowsBackNothingPays() {
        assertTrue(Double.isInfinite(Payback.years(100, 0, 0)));
        assertTrue(Double.isInfinite(Payback.years(100, -5, 2)));
        assertEquals(0, Payback.years(0, -5, 0));
        assertThrows(IllegalArgumentException.class, () -> Payback.years(-1, 5, 0));
    }

    /** Validation: F. J. Anscombe, Graphs in Statistical Analysis, The American Statistician 27 (1973), set 1: 3.00 and 0.500. */
    @Test
    void theLineOfPricesIsThatOfLeastSquares() {
        double[] x = { 10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5 };
        double[] y = { 8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68 };
        PriceBook.Fit fit = PriceBook.Fit.of(x, y);
        assertEquals(3.00, fit.base(), 0.005);
        assertEquals(0.500, fit.perMm(), 0.0005);
    }
}
