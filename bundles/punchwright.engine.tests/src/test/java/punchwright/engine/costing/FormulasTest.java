// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static punchwright.engine.costing.Formulas.add;
import static punchwright.engine.costing.Formulas.ceiling;
import static punchwright.engine.costing.Formulas.div;
import static punchwright.engine.costing.Formulas.ifGreater;
import static punchwright.engine.costing.Formulas.mul;
import static punchwright.engine.costing.Formulas.num;
import static punchwright.engine.costing.Formulas.percent;
import static punchwright.engine.costing.Formulas.ref;
import static punchwright.engine.costing.Formulas.round;
import static punchwright.engine.costing.Formulas.roundUp;
import static punchwright.engine.costing.Formulas.sub;
import static punchwright.engine.costing.Formulas.sum;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;

/** Validation of formulas: the text reads as the tree computes; values by arithmetic on paper. */
class FormulasTest {

    private static final Map<String, Double> CELLS = Map.of("a_x", 12.0, "b_x", 5.0, "c_x", 2.0);

    private static double value(Formula f) {
        return f.evaluate(CELLS::get);
    }

    @Test
    void bracketsStandOnlyWhereTheMeaningNeedsThem() {
        Expression a = ref("a_x");
        Expression b = ref("b_x");
        Expression c = ref("c_x");
        assertEquals("a_x-(b_x-c_x)", sub(a, sub(b, c)).text());
        assertEquals(9.0, value(sub(a, sub(b, c))));
        assertEquals("a_x-b_x-c_x", sub(a, b, c).text());
        assertEquals(5.0, value(sub(a, b, c)));
        assertEquals("a_x/(b_x*c_x)", div(a, mul(b, c)).text());
        assertEquals(1.2, value(div(a, mul(b, c))), 1e-15);
        assertEquals("(a_x+b_x)*c_x/100", percent(mul(add(a, b), c)).text());
        assertEquals(0.34, value(percent(mul(add(a, b), c))), 1e-15);
        assertEquals("a_x*(b_x/c_x)".replace("(b_x/c_x)", "b_x/c_x"), mul(a, div(b, c)).text());
        assertEquals(30.0, value(mul(a, div(b, c))));
        assertEquals("a_x*(-0.5)", mul(a, num(-0.5)).text());
    }

    /** ISO/IEC 29500-1, 18.17.7: ROUND half away from zero, ROUNDUP away from zero, CEILING to a multiple. */
    @Test
    void roundsAsSpreadsheetsDo() {
        assertEquals(2.68, value(round(num(2.675), 2)));
        assertEquals(-2.68, value(round(num(-2.675), 2)));
        assertEquals(1.01, value(round(num(1.005), 2)));
        assertEquals(3.2, value(roundUp(num(3.11), 1)));
        assertEquals(30.0, value(ceiling(num(21), num(15))));
        assertEquals(21.0, value(ceiling(num(21), num(3))));
    }

    @Test
    void onlyTheTakenBranchIsWorkedOut() {
        Expression zero = sub(ref("c_x"), ref("c_x"));
        Expression guarded = ifGreater(zero, num(0), div(ref("a_x"), zero), num(7));
        assertEquals(7.0, value(guarded));
        assertEquals("IF(c_x-c_x>0,a_x/(c_x-c_x),7)", guarded.text());
    }

    @Test
    void longSumsAreNestedAsSpreadsheetsTakeAtMost255Arguments() {
        Expression long250 = sum(IntStream.range(0, 250).mapToObj(i -> num(i)).toList());
        assertEquals(31125.0, value(long250));
        assertEquals(4, long250.text().split("SUM\\(", -1).length - 1);
        assertEquals("0", sum(List.of()).text());
    }

    @Test
    void referencesAreListedOnceInOrder() {
        assertEquals(List.of("b_x", "a_x"), add(ref("b_x"), ref("a_x"), ref("b_x")).references());
        assertThrows(IllegalArgumentException.class, () -> ref("AB12"));
        assertThrows(IllegalArgumentException.class, () -> num(Double.NaN));
    }
}
