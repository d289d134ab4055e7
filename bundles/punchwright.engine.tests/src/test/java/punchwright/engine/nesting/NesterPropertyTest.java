// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Pose;
import punchwright.engine.nesting.check.LayoutCheck;

/** Properties that hold for every job, on seeded random orders, judged by the independent check. */
class NesterPropertyTest {

    private static final int ORDERS = Integer.getInteger("punchwright.orders", 150);

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

    @Test
    void sameInputSameResult() {
        for (int seed = 1; seed <= 20; seed++) {
            assertEquals(Nester.nest(Jobs.random(seed)).layouts(), Nester.nest(Jobs.random(seed)).layouts());
        }
    }

    /** The check itself must see each kind of damage, or its silence above means nothing. */
    @Test
    void theCheckSeesDamage() {
        NestingJob job = Jobs.job(List.of(Jobs.part("A", 200, 150, 12, 10, 0.0)),
                List.of(Jobs.sheet("S", 2000, 1000, 40, 1)), 10, 80);
        Layout good = Nester.nest(job).layouts().get(0);
        assertEquals(List.of(), faultsOf(job, good));
        Placement first = good.placements().get(0);
        Pose p = first.pose();
        assertFalse(faultsOf(job, with(good, new Pose(p.x() + 0.1, p.y(), 0, false))).isEmpty(), "web");
        assertFalse(faultsOf(job, with(good, new Pose(p.x() - 0.1, p.y(), 0, false))).isEmpty(), "edge margin");
        assertFalse(faultsOf(job, with(good, new Pose(p.x(), p.y() - 1, 0, false))).isEmpty(), "clamp strip");
        assertFalse(faultsOf(job, with(good, new Pose(1700, 800, 180, false))).isEmpty(), "angle");
        assertFalse(faultsOf(job, new Layout(good.sheet(), good.placements().subList(1, 12), 1)).isEmpty(), "count");
        assertFalse(faultsOf(job, new Layout(good.sheet(), good.placements(), 2)).isEmpty(), "stock");
    }

    private static List<Finding> faultsOf(NestingJob job, Layout layout) {
        return LayoutCheck.of(job, new Nesting(List.of(layout), 0, 0, List.of()));
    }

    private static Layout with(Layout layout, Pose pose) {
        List<Placement> placements = new ArrayList<>(layout.placements());
        placements.set(0, new Placement(placements.get(0).partId(), pose));
        return new Layout(layout.sheet(), placements, layout.runs());
    }
}
