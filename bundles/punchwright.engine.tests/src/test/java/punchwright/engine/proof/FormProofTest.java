// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.engine.holding.ClampArrangement;
import punchwright.engine.press.FormClearance;
import punchwright.engine.press.Machine;
import punchwright.engine.sequence.Shop;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolRoom;
import punchwright.engine.tooling.ToolShape;

/**
 * Forms untouched after they stand: each way of spoiling a good plan is named, what is harmless is proven. The rules are common
 * practice, no source; distances by hand from the plan's own figures.
 */
class FormProofTest {

    private static final int CASES = Integer.getInteger("punchwright.forms", 16);
    private static final ClampArrangement CLAMPS = new ClampArrangement(List.of(200.0, 600.0), 0, 2000, false);

    private static Tool emboss(double height, ToolRoom room) {
        return Shop.form("E", ToolShape.EMBOSS, 20, 20, height, room);
    }

    /** One plate, and a form of 20 mm on the skeleton at the place, made as the first hit. */
    private static SmallPlan with(Tool form, double x, double y) {
        SmallPlan p = SmallPlan.of(1, 1);
        p.hits.add(0, new ProofHit(900, x, y, 0, form, 0));
        return p;
    }

    private static Machine press(double up, double down, double holdDown) {
        Machine m = Shop.machine();
        return new Machine(m.id(), m.name(), m.throatDepthMm(), m.travelXMm(), m.travelYMm(), m.xAxis(), m.yAxis(),
                m.longestSheetMm(), m.minThicknessMm(), m.maxThicknessMm(), m.maxSheetMassKg(), m.pressForceN(), m.headKind(),
                m.places(), m.clamps(), m.times(), m.dropOpeningMm(), m.accuracyMm(), m.options(),
                new FormClearance(up, down, holdDown));
    }

    /**
     * A square of 10 punched 15.5 mm from the axis of a form of 20 leaves 0.5 mm; 1.5 t = 2.25 mm are needed; 18 mm leave 3. A hole
     * in the middle of the form is punched before it or not at all.
     */
    @Test
    void anOrderSwappedAcrossAFormIsCaught() {
        for (double away : new double[] {0, 15.5, 18}) {
            SmallPlan p = with(emboss(3, ToolRoom.NONE), 400, 300);
            p.hits.add(1, new ProofHit(901, 400 + away, 300, 0, SmallPlan.Q10, 0));
            assertEquals(away == 18, p.prove().proven(), () -> codes(p));
            p.hits.add(0, p.hits.remove(1));
            assertTrue(p.prove().proven(), () -> codes(p));
        }
    }

    /** The record keeps 8 mm clear: a cut 3 mm beside the form is a warning that names both. */
    @Test
    void nearerThanTheRecordAllowsIsAWarning() {
        SmallPlan p = with(emboss(3, new ToolRoom(8, 0, 0, 0)), 400, 300);
        p.hits.add(1, new ProofHit(901, 418, 300, 0, SmallPlan.Q10, 0));
        ProofResult r = p.prove();
        assertTrue(r.proven());
        assertEquals("PROOF-FORM-CLOSE", codes(p));
        assertTrue(r.findings().getFirst().message().contains("3.0 mm") && r.findings().getFirst().message().contains("8.0 mm"));
    }

    /** A punch in a body of 60 mm comes down 25 mm beside the axis of a form of 20: 15 mm from its edge, 30 are needed. */
    @Test
    void aBodyThatComesDownOnTheFormIsCaught() {
        Tool stout = Shop.form("Q", ToolShape.SQUARE, 10, 10, 0, new ToolRoom(0, 60, 0, 0));
        Tool slim = new Tool("Q", "Q", ToolShape.SQUARE, 10, 10, 0, stout.freedom(), 0, List.of(0.2), stout.shear(), 0, 100, 10,
                5, stout.hitsPerGrind(), 0, 1, 0, List.of(), null, stout.room());
        SmallPlan p = with(emboss(3, ToolRoom.NONE), 400, 300);
        p.hits.add(1, new ProofHit(901, 425, 300, 0, slim, 0));
        assertTrue(codes(p).contains("PROOF-FORM-STRUCK"), codes(p));
        p.change(1, h -> new ProofHit(901, 441, 300, 0, slim, 0));
        assertTrue(p.prove().proven(), () -> codes(p));
    }

    /** Clamps are 80 mm wide and 60 deep: a form at y 65 reaches to 55 under a clamp that comes to within 50 mm of its axis. */
    @Test
    void aClampOfALaterHoldingOnAFormIsCaught() {
        Random random = new Random(6);
        for (int i = 0; i < CASES; i++) {
            SmallPlan p = with(emboss(3, ToolRoom.NONE), 400, 65);
            p.parks.put(0, new Point(1000, 500));
            double first = 160 + random.nextInt(400);
            p.holdings = List.of(CLAMPS, new ClampArrangement(List.of(first, first + 400), 0, 2000, false));
            later(p, 1);
            double reach = 40 + Math.sqrt(75);
            boolean clamped = Math.abs(first - 400) < reach || Math.abs(first + 400 - 400) < reach;
            assertEquals(!clamped, p.prove().proven(), () -> "clamp at " + first + ": " + codes(p));
            assertTrue(!clamped || codes(p).contains("PROOF-FORM-CLAMPED"));
        }
    }

    /** The hold-down presses 90 mm across, as the largest place: 55 mm from the axis of a form of 20 are needed. */
    @Test
    void aFormUnderTheHoldDownIsCaught() {
        Random random = new Random(7);
        for (int i = 0; i < CASES; i++) {
            SmallPlan p = with(emboss(3, ToolRoom.NONE), 400, 300);
            p.holdings = List.of(CLAMPS, CLAMPS);
            later(p, 1);
            Point park = new Point(400 + random.nextInt(100), 300 + random.nextInt(40));
            p.parks.put(0, park);
            boolean pressed = park.distance(new Point(400, 300)) < 55 - 1e-3;
            assertEquals(!pressed, p.prove().proven(), () -> park + ": " + codes(p));
            assertTrue(!pressed || codes(p).contains("PROOF-FORM-HELD-DOWN"));
        }
        SmallPlan p = with(emboss(3, ToolRoom.NONE), 400, 300);
        p.holdings = List.of(CLAMPS, CLAMPS);
        later(p, 1);
        assertEquals("PROOF-FORM-HELD-DOWN", codes(p));
        p.machine = press(0, 0, 30);
        p.parks.put(0, new Point(426, 300));
        assertTrue(p.prove().proven(), () -> codes(p));
    }

    @Test
    void aFormThatDoesNotPassIsCaught() {
        SmallPlan p = with(emboss(5, ToolRoom.NONE), 400, 300);
        assertEquals("PROOF-FORM-ROOM-UNKNOWN", codes(p), "6 mm at most leave 4.5 over 1.5 mm");
        p.machine = press(4.9, 0, 0);
        assertEquals("PROOF-FORM-HIGH", codes(p));
        p.machine = press(5, 0, 0);
        assertTrue(p.prove().proven(), () -> codes(p));
        SmallPlan down = with(emboss(-2, ToolRoom.NONE), 400, 300);
        assertEquals("PROOF-FORM-ROOM-UNKNOWN", codes(down));
        down.machine = press(5, 1.9, 0);
        assertEquals("PROOF-FORM-HIGH", codes(down));
        down.machine = press(5, 2, 0);
        assertTrue(down.prove().proven());
    }

    /** The record asks for two hits a form: one is too few, two are right, three a doubled hit. */
    @Test
    void hitsOfAFormAreCounted() {
        Tool twice = Shop.form("L", ToolShape.LOUVRE, 12, 6, 3, new ToolRoom(0, 0, 0, 2));
        SmallPlan p = SmallPlan.of(1, 1);
        int at = p.first(SmallPlan.LOUVRE);
        p.change(at, h -> new ProofHit(h.id(), h.xMm(), h.yMm(), 0, twice, 0));
        assertEquals("PROOF-FORM-UNFINISHED", codes(p));
        assertFalse(p.prove().proven());
        p.hits.add(at, p.hits.get(at));
        assertEquals("", codes(p));
        p.hits.add(at, p.hits.get(at));
        assertEquals("PROOF-DOUBLE", codes(p));
    }

    /** A bead of 50 along x by a roller of 20 in steps of 5: seven hits from 15 mm before its middle to 15 mm after it. */
    @Test
    void aBeadIsMadeFromEndToEnd() {
        Tool roller = Shop.form("W", ToolShape.ROLLER, 20, 6, 3, ToolRoom.NONE);
        for (int missing = -1; missing < 7; missing++) {
            SmallPlan p = SmallPlan.of(1, 1);
            p.forms.add(new ProofForm(0, ToolShape.ROLLER, new Point(90, 133), 0, 50));
            for (int i = 0; i < 7; i++) {
                if (i != missing) {
                    p.hits.add(new ProofHit(900 + i, 75 + 5 * i, 133, 0, roller, 0));
                }
            }
            int m = missing;
            assertEquals(m == 0 || m == 6 ? "PROOF-FORM-GAP" : "", codes(p), "without " + m);
        }
    }

    /** All hits but the first belong to the holding. */
    private static void later(SmallPlan p, int holding) {
        for (int i = 1; i < p.hits.size(); i++) {
            p.change(i, h -> new ProofHit(h.id(), h.xMm(), h.yMm(), h.angleDeg(), h.tool(), holding));
        }
    }

    private static String codes(SmallPlan p) {
        return String.join(" ", p.prove().findings().stream().map(Finding::code).distinct().toList());
    }
}
