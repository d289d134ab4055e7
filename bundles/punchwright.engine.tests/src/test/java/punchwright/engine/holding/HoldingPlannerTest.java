// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import punchwright.engine.finding.Finding;
import punchwright.engine.press.Clamps;
import punchwright.engine.tooling.ToolShape;

/** Validation: holdings against derived values, brute force and an independent check. */
class HoldingPlannerTest {

    private static final Clamps TWO = new Clamps(2, 60, 60, 10, 100, 1150, 150);
    private static final int CASES = Integer.getInteger("punchwright.holdings", 400);

    private static List<Integer> unmade(HoldingPlan plan) {
        return plan.findings().stream().filter(f -> f.reason() == HoldingReason.HIT_UNREACHABLE)
                .map(f -> (Integer) f.arguments().get(0)).toList();
    }

    private static List<SheetHit> row(double lengthMm, double y, double pitchMm) {
        List<SheetHit> hits = new ArrayList<>();
        for (int i = 0; i * pitchMm <= lengthMm; i++) {
            hits.add(HoldingJobs.hit(i, HoldingJobs.tool(ToolShape.ROUND, 10, 10), i * pitchMm, y));
        }
        return hits;
    }

    /** Repositions = max(0, ceil((L - T) / (T - s))) with overlap s of two neighbouring reaches; derived, no source. */
    @ParameterizedTest(name = "sheet {0} mm, travel {1} mm: {2} repositions")
    @CsvSource({"3000, 1250, 2", "1250, 1250, 0", "2450, 1250, 1", "10000, 1250, 7"})
    void repositions(double lengthMm, double travelMm, int repositions) {
        HoldingJob job = new HoldingJob(HoldingJobs.machine(1250, travelMm, TWO), lengthMm, 1000, row(lengthMm, 500, 5));
        HoldingPlan plan = HoldingPlanner.plan(job);
        assertEquals(repositions, plan.holdings().size() - 1);
        assertEquals(List.of(), HoldingCheck.faults(job, plan, List.of()));
    }

    @Test
    @DisplayName("as few holdings and as few hits left out as brute force over every clamp setting")
    void equalsBruteForce() {
        for (int seed = 1; seed <= CASES; seed++) {
            HoldingJob job = HoldingJobs.random(seed);
            HoldingPlan plan = HoldingPlanner.plan(job);
            if (plan.findings().stream().anyMatch(f -> f.isError() && f.reason() != HoldingReason.HIT_UNREACHABLE)) {
                continue;
            }
            int clamps = plan.holdings().isEmpty() ? job.machine().clamps().count()
                    : plan.holdings().get(0).clamps().clampCentersMm().size();
            BruteForce brute = new BruteForce(job, clamps);
            BruteForce.Best best = brute.best(false);
            if (best.unmade() > 0 && brute.best(true).unmade() < best.unmade()) {
                best = brute.best(true);
            }
            assertEquals(List.of(), HoldingCheck.faults(job, plan, unmade(plan)), "seed " + seed);
            assertEquals(best, new BruteForce.Best(unmade(plan).size(), plan.holdings().size()), "seed " + seed);
        }
    }

    @Test
    @DisplayName("hits in the clamp strip along the whole edge: a second holding with the clamps shifted")
    void hitsBetweenTheClamps() {
        HoldingJob job = new HoldingJob(HoldingJobs.machine(1250, 1250, TWO), 1200, 1000, row(1200, 30, 20));
        HoldingPlan plan = HoldingPlanner.plan(job);
        assertEquals(List.of(), unmade(plan));
        assertEquals(List.of(), HoldingCheck.faults(job, plan, List.of()));
        assertEquals(2, plan.holdings().size());
    }

    @Test
    @DisplayName("wider than the throat: turned once, the two halves in both frames")
    void turned() {
        List<SheetHit> hits = new ArrayList<>();
        for (int i = 0; i < 15; i++) {
            hits.add(HoldingJobs.hit(i, HoldingJobs.tool(ToolShape.ROUND, 10, 10), 500, 100 + 100 * i));
        }
        HoldingJob job = new HoldingJob(HoldingJobs.machine(1000, 1250, TWO), 1200, 1600, hits);
        HoldingPlan plan = HoldingPlanner.plan(job);
        assertEquals(List.of(false, true), plan.holdings().stream().map(h -> h.clamps().turned()).toList());
        assertEquals(List.of(), HoldingCheck.faults(job, plan, List.of()));
        assertTrue(plan.findings().stream().anyMatch(f -> f.reason() == HoldingReason.TURNED));
    }

    @Test
    void refusals() {
        Finding wide = HoldingPlanner.plan(new HoldingJob(HoldingJobs.machine(1000, 1250, TWO), 1200, 2001, row(100, 500, 50)))
                .findings().get(0);
        assertEquals(HoldingReason.SHEET_WIDE, wide.reason());
        assertTrue(wide.message().contains("2001 mm wide; the tool reaches 1000 mm"), wide.message());
        assertTrue(wide.remedy().contains("at most 2000 mm"), wide.remedy());
        Finding longSheet = HoldingPlanner.plan(new HoldingJob(HoldingJobs.machine(1000, 1250, TWO), 10_001, 900,
                row(100, 500, 50))).findings().get(0);
        assertEquals(HoldingReason.SHEET_LONG, longSheet.reason());
        Finding shortSheet = HoldingPlanner.plan(new HoldingJob(HoldingJobs.machine(1000, 1250, TWO), 50, 900,
                row(40, 500, 50))).findings().get(0);
        assertEquals(HoldingReason.NO_CLAMP_FITS, shortSheet.reason());
    }

    @Test
    @DisplayName("a clamp that cannot move covers a hit: an error with its place and the way out")
    void hitUnderAFixedClamp() {
        Clamps one = new Clamps(1, 100, 60, 10, 100, 100, 0);
        HoldingJob job = new HoldingJob(HoldingJobs.machine(1000, 1250, one), 120, 100, List.of(
                HoldingJobs.hit(0, HoldingJobs.tool(ToolShape.ROUND, 10, 10), 60, 50)));
        HoldingPlan plan = HoldingPlanner.plan(job);
        Finding f = plan.findings().stream().filter(Finding::isError).findFirst().orElseThrow();
        assertEquals(HoldingReason.HIT_UNREACHABLE, f.reason());
        assertEquals(60, f.place().x());
        assertTrue(f.message().contains("x 60, y 50 mm") && f.message().contains("under or too near to a clamp"), f.message());
        assertFalse(f.remedy().isEmpty());
        assertEquals(List.of(), plan.holdings());
    }

    @Test
    void noHitsNoHolding() {
        assertTrue(HoldingPlanner.plan(new HoldingJob(HoldingJobs.machine(1000, 1250, TWO), 1000, 500, List.of()))
                .holdings().isEmpty());
    }

    @Test
    @DisplayName("10 m sheet with 20,000 hits, some in the clamp strip")
    void longSheetManyHits() {
        List<SheetHit> hits = new ArrayList<>();
        java.util.SplittableRandom r = new java.util.SplittableRandom(7);
        for (int i = 0; i < 20_000; i++) {
            hits.add(HoldingJobs.hit(i, HoldingJobs.tool(ToolShape.ROUND, 10, 10), r.nextDouble(0, 10_000),
                    r.nextDouble(i % 50 == 0 ? 20 : 100, 900)));
        }
        HoldingJob job = new HoldingJob(HoldingJobs.machine(1250, 2500, new Clamps(3, 60, 60, 10, 100, 2400, 150)), 10_000,
                1000, hits);
        HoldingPlan plan = HoldingPlanner.plan(job);
        assertEquals(List.of(), HoldingCheck.faults(job, plan, unmade(plan)));
        assertTrue(plan.holdings().size() <= 8, plan.holdings().size() + " holdings");
    }

    @Test
    void everyReasonHasTextsInBothLanguages() {
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            ResourceBundle texts = ResourceBundle.getBundle("punchwright.engine.holding.findings", locale);
            for (HoldingReason reason : HoldingReason.values()) {
                assertTrue(texts.containsKey(reason.code() + ".message"), reason.code());
                assertTrue(texts.containsKey(reason.code() + ".remedy"), reason.code());
            }
        }
    }
}
