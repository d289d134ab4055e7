// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import punchwright.engine.holding.SheetHit;
import punchwright.engine.press.Axis;
import punchwright.engine.press.AxisMotion;
import punchwright.engine.sequence.Sequence;
import punchwright.engine.sequence.SequencedHit;
import punchwright.engine.sequence.Shop;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolUse;

/**
 * Validation against closed forms of uniform acceleration worked out by hand: below v^2/a the move takes 2 sqrt(s/a),
 * above it s/v + v/a. With 1000 mm/s and 10 000 mm/s2 the change lies at 100 mm.
 */
class MoveTimeValidationTest {

    private static final ToolUse ROUND = Shop.use(1, Shop.tool("R10", ToolShape.ROUND, 10, 10), Shop.P1);

    @ParameterizedTest
    @CsvSource({"1, 0.02", "10, 0.06324555320336759", "25, 0.1", "100, 0.2", "500, 0.6", "0, 0", "-500, 0.6"})
    void trapezoid(double distanceMm, double expectedS) {
        assertEquals(expectedS, AxisMotion.seconds(new Axis(1000, 10000), distanceMm), 1e-9);
    }

    /** X 300 mm at 1200 and 12 000: 0.25 + 0.1; Y 100 mm at 800 and 8000: 0.125 + 0.1. The slower counts. */
    @Test
    void twoAxesLastAsLongAsTheSlower() {
        assertEquals(0.350, AxisMotion.seconds(new Axis(1200, 12000), 300), 1e-9);
        assertEquals(0.225, AxisMotion.seconds(new Axis(800, 8000), 100), 1e-9);
        double both = new punchwright.engine.sequence.RunMetric(Shop.machine())
                .step(Shop.hit(0, ROUND, 0, 0, HitRole.PIERCE), Shop.hit(1, ROUND, 500, 100, HitRole.PIERCE)).moveS();
        assertEquals(Math.max(0.5 + 0.1, 0.2 + 0.1), both, 1e-9);
    }

    /** The speed of a trapezoidal move integrated in small steps gives the distance after the closed-form time. */
    @ParameterizedTest
    @CsvSource({"3", "40", "99", "100", "101", "350", "2000"})
    void numericIntegrationGivesTheDistance(double distanceMm) {
        double v = 1000;
        double a = 10000;
        double t = AxisMotion.seconds(new Axis(v, a), distanceMm);
        int n = 200_000;
        double dt = t / n;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            double at = (i + 0.5) * dt;
            sum += Math.min(v, a * Math.min(at, t - at)) * dt;
        }
        assertEquals(distanceMm, sum, 1e-6 * distanceMm);
    }

    /** Load 30, stroke 0.15; 500 mm 0.6 and stroke 0.15; unload 20; a single tool stays in place from sheet to sheet. */
    @Test
    void twoHitsByHand() {
        Timeline t = time(List.of(Shop.hit(0, ROUND, 0, 0, HitRole.PIERCE), Shop.hit(1, ROUND, 500, 0, HitRole.PIERCE)), 0);
        assertEquals(30 + 0.15 + 0.6 + 0.15 + 20, t.totalS(), 1e-9);
        assertEquals(0.6, t.secondsByCause().get(Cause.MOVE), 1e-9);
        assertEquals(t.totalS(), t.boundS(), 1e-9);
    }

    /** 600 strokes a minute are 0.1 s; a pitch of 4 mm needs 2 sqrt(4/10000) = 0.04 s and does not slow them down. */
    @Test
    void nibblingRunsAtItsRate() {
        Timeline t = time(path(21, 4, 0), 0);
        assertEquals(30 + 0.15 + 20 * 0.1 + 20, t.totalS(), 1e-9);
        assertEquals(2.0, t.secondsByCause().get(Cause.NIBBLE), 1e-9);
    }

    /** Across, 5000 mm/s2 and 16 mm: 2 sqrt(16/5000) = 0.11314 s; but 16 mm is above the nibbling pitch: single hits. */
    @Test
    void largePitchMakesSingleHits() {
        Timeline t = time(path(3, 0, 16), 0);
        assertEquals(30 + 0.15 + 2 * (2 * Math.sqrt(16 / 5000.0) + 0.15) + 20, t.totalS(), 1e-9);
    }

    /** A nibbling period never is shorter than the move: 8 mm across take 0.08 s, a rate of 1200 a minute asks 0.05 s. */
    @Test
    void nibblingWaitsForTheMove() {
        var m = Shop.machine();
        var s = Shop.TIMES;
        var times = new punchwright.engine.press.Times(s.settlingS(), s.strokeS(), 1200, 8, s.toolChangeS(), s.handChangeS(),
                s.insertChangeS(), s.turnDegPerS(), s.repositionS(), s.turnOverS(), s.loadS(), s.unloadS(), s.partRemovalS());
        var fast = new punchwright.engine.press.Machine(m.id(), m.name(), m.throatDepthMm(), m.travelXMm(), m.travelYMm(),
                m.xAxis(), m.yAxis(), m.longestSheetMm(), m.minThicknessMm(), m.maxThicknessMm(), m.maxSheetMassKg(),
                m.pressForceN(), m.headKind(), m.places(), m.clamps(), times, m.dropOpeningMm(), m.accuracyMm());
        List<SheetHit> hits = path(11, 0, 8);
        Timeline t = RunTime.of(new MotionJob(fast, Shop.oneHolding(hits), sequence(hits), 0));
        assertEquals(30 + 0.15 + 10 * 2 * Math.sqrt(8 / 5000.0) + 20, t.totalS(), 1e-9);
    }

    static List<SheetHit> path(int n, double dx, double dy) {
        return IntStream.range(0, n).mapToObj(i -> Shop.hit(i, ROUND, i * dx, i * dy, HitRole.NIBBLE)).toList();
    }

    static Sequence sequence(List<SheetHit> hits) {
        return new Sequence(hits.stream().map(h -> new SequencedHit(h, 0)).toList(), List.of());
    }

    static Timeline time(List<SheetHit> hits, int partsRemoved) {
        return RunTime.of(new MotionJob(Shop.machine(), Shop.oneHolding(hits), sequence(hits), partsRemoved));
    }
}
