// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.check.LayoutCheck;

/** Properties that hold for every job, on seeded random orders, judged by the independent check. */
class NesterPropertyTest {

    private static final int ORDERS = Integer.getInteger("punchwright.orders", 150);
    /** Those with every kind of input take longer: a small share unless more are asked for. */
    private static final int VARIOUS = ORDERS > 150 ? ORDERS : 30;

    @Test
    void everyRandomOrderIsValid() {
        for (int seed = 1; seed <= ORDERS; seed++) {
            NestingJob job = Jobs.random(seed);
            Nesting nesting = Nester.nest(job);
            assertEquals(List.of(), LayoutCheck.of(job, nesting), "seed " + seed);
            double used = nesting.layouts().stream().mapToDouble(l -> l.runs() * l.sheet().lengthMm() * l.sheet().widthMm())
                    .sum();
            boolean complete = nesting.findings().stream().noneMatch(Finding::isError);
            assertTrue(!complete || used >= nesting.boundMm2() - 1e-3, "seed " + seed + ": bound above the sheets used");
        }
    }

    /** Orders with every kind of input. */
    @Test
    void everyVariousOrderIsValid() {
        for (int seed = 1; seed <= VARIOUS; seed++) {
            NestingJob job = Jobs.various(seed);
            Nesting n = Nester.nest(job);
            assertEquals(List.of(), LayoutCheck.of(job, n), "seed " + seed);
            assertEquals(material(n), n.cost().material(), 1e-6, "seed " + seed);
            boolean complete = n.findings().stream().noneMatch(Finding::isError);
            assertTrue(!complete || n.sheetMm2() >= n.boundMm2() - 1e-3, "seed " + seed + ": area bound");
            assertTrue(!complete || n.cost().total() >= n.boundCost() - 1e-6, "seed " + seed + ": cost " + n.cost().total()
                    + " below its bound " + n.boundCost());
        }
    }

    private static double material(Nesting n) {
        return n.layouts().stream().mapToDouble(l -> l.runs() * l.sheet().price()).sum();
    }

    @Test
    void sameInputSameResult() {
        for (int seed = 1; seed <= 20; seed++) {
            assertEquals(Nester.nest(Jobs.random(seed)).layouts(), Nester.nest(Jobs.random(seed)).layouts());
        }
        for (int seed = 1; seed <= 8; seed++) {
            assertEquals(Nester.nest(Jobs.various(seed)), Nester.nest(Jobs.various(seed)));
        }
    }
}
