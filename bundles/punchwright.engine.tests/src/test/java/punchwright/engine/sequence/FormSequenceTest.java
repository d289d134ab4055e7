// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.ToolRoom;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolUse;

/** The order of forms among themselves and against cuts. The rules are common practice, no source. */
class FormSequenceTest {

    private static final int CASES = Integer.getInteger("punchwright.forms", 100);
    private static final double THICKNESS_MM = 1;

    private static ToolUse form(int number, double size, double height, double keepClear) {
        return Shop.use(number, Shop.form("F" + number, ToolShape.EMBOSS, size, size, height, new ToolRoom(keepClear, 0, 0, 0)),
                Shop.P2);
    }

    private static ToolUse round(int number, double size) {
        return Shop.use(number, Shop.tool("R" + number, ToolShape.ROUND, size, size), Shop.P3);
    }

    @Test
    void upBeforeDownAndLowBeforeHigh() {
        List<SheetHit> hits = List.of(Shop.hit(0, form(1, 8, -2, 3), 100, 100, HitRole.FORM),
                Shop.hit(1, form(2, 8, 6, 3), 300, 100, HitRole.FORM), Shop.hit(2, form(3, 8, 2, 3), 500, 100, HitRole.FORM),
                Shop.hit(3, form(4, 8, -1, 3), 700, 100, HitRole.FORM), Shop.hit(4, round(5, 5), 100, 100, HitRole.PIERCE));
        assertEquals(List.of(4, 2, 1, 3, 0), ids(Shop.job(hits, THICKNESS_MM)));
    }

    /** A rule that the engineer adds goes before the custom of low before high; it does not undo a need. */
    @Test
    void anAddedRuleGoesBeforeCustom() {
        List<SheetHit> hits = List.of(Shop.hit(0, form(1, 8, 2, 3), 100, 100, HitRole.FORM),
                Shop.hit(1, form(2, 8, 6, 3), 300, 100, HitRole.FORM), Shop.hit(2, round(3, 5), 500, 100, HitRole.PIERCE));
        SequenceJob job = Shop.job(hits, THICKNESS_MM);
        assertEquals(List.of(2, 0, 1), ids(job));
        PrecedenceRule soft = PrecedenceRule.tools("F2", "F1", "The low one is soft.");
        Sequence s = Sequencer.order(job, PrecedenceRules.with(List.of(soft)));
        assertEquals(List.of(2, 1, 0), s.hits().stream().map(h -> h.hit().id()).toList());
        assertEquals(List.of(), s.findings());
        Sequence t = Sequencer.order(job, PrecedenceRules.with(List.of(PrecedenceRule.tools("F2", "R3", "x"))));
        assertEquals("SEQUENCE-RULES-CIRCULAR", t.findings().getFirst().code());
        assertEquals(3, t.hits().size());
    }

    /** A countersink and a mark stand nowhere, whatever depth their records give: they come before what stands. */
    @Test
    void whatStandsNowhereComesFirst() {
        ToolUse sink = Shop.use(1, Shop.form("K", ToolShape.COUNTERSINK, 10, 10, -4, ToolRoom.NONE), Shop.P2);
        List<SheetHit> hits = List.of(Shop.hit(0, form(2, 8, 2, 3), 300, 100, HitRole.FORM),
                Shop.hit(1, sink, 100, 100, HitRole.FORM));
        assertEquals(List.of(1, 0), ids(Shop.job(hits, THICKNESS_MM)));
    }

    /** The high form keeps 3 mm clear, the low one 20: beside each other the low one comes last, though it is lower. */
    @Test
    void whatKeepsMoreRoomClearComesAfterItsNeighbour() {
        List<SheetHit> hits = List.of(Shop.hit(0, form(1, 10, 2, 20), 100, 100, HitRole.FORM),
                Shop.hit(1, form(2, 10, 6, 3), 120, 100, HitRole.FORM));
        Sequence s = Sequencer.order(Shop.job(hits, THICKNESS_MM));
        assertEquals(List.of(1, 0), s.hits().stream().map(h -> h.hit().id()).toList());
        assertEquals(List.of(), s.findings());
    }

    /** Two forms that each keep the other away: no order helps, and the finding says so with both figures. */
    @Test
    void whatNoOrderHelpsIsSaid() {
        List<SheetHit> hits = List.of(Shop.hit(0, form(1, 10, 2, 20), 100, 100, HitRole.FORM),
                Shop.hit(1, form(2, 10, 6, 12), 120, 100, HitRole.FORM));
        Sequence s = Sequencer.order(Shop.job(hits, THICKNESS_MM));
        assertEquals(1, s.findings().size());
        assertTrue(s.findings().getFirst().message().contains("forms 10.0 mm beside the form of F1"),
                s.findings().getFirst().message());
        assertTrue(s.findings().getFirst().remedy().contains("10.0 mm"), s.findings().getFirst().remedy());
    }

    /** A punch of 6 in a body of 60 comes 20 mm beside a form: 30 mm from axis to form are asked for. */
    @Test
    void theBodyOfTheLaterToolMustNotComeDownOnTheForm() {
        ToolUse stout = Shop.use(1, Shop.form("R", ToolShape.ROUND, 6, 6, 0, new ToolRoom(0, 60, 0, 0)), Shop.P3);
        SheetHit slit = new SheetHit(0, stout, new Point(125, 100), 0, HitRole.SLIT, 0, 0);
        List<SheetHit> near = List.of(slit, Shop.hit(1, form(2, 10, 2, 3), 100, 100, HitRole.FORM));
        assertEquals(List.of(0, 1), ids(Shop.job(near, THICKNESS_MM)));
        List<SheetHit> flat = List.of(slit, Shop.hit(1, form(2, 10, 0, 3), 100, 100, HitRole.FORM));
        assertEquals(List.of(1, 0), ids(Shop.job(flat, THICKNESS_MM)));
    }

    /** Louvres of one tool stand w + 4 t apart: 4 t of sheet between them; what the record keeps clear concerns other tools. */
    @Test
    void louvresOfOneToolStandAtTheirPitch() {
        ToolUse louvre = Shop.use(1, Shop.form("L", ToolShape.LOUVRE, 40, 10, 3, new ToolRoom(40, 0, 0, 0)), Shop.P1);
        assertEquals(0, findings(louvre, 14));
        assertEquals(1, findings(louvre, 13.9));
    }

    private static int findings(ToolUse louvre, double pitch) {
        List<SheetHit> hits = List.of(Shop.hit(0, louvre, 100, 100, HitRole.FORM), Shop.hit(1, louvre, 100, 100 + pitch,
                HitRole.FORM));
        return Sequencer.order(Shop.job(hits, THICKNESS_MM)).findings().size();
    }

    /** Three hits of one form stay together, whichever way the others are visited. */
    @Test
    void hitsOfOneFormStayTogetherInTheirOrder() {
        ToolUse louvre = Shop.use(1, Shop.form("L", ToolShape.LOUVRE, 40, 10, 3, ToolRoom.NONE), Shop.P1);
        List<SheetHit> hits = new ArrayList<>();
        for (int i = 0; i < 15; i++) {
            hits.add(new SheetHit(i, louvre, new Point(100 + 80 * (i / 3 * 2 % 5), 300), 0, HitRole.FORM, i / 3, 0));
        }
        Sequence s = Sequencer.order(Shop.job(hits, THICKNESS_MM));
        for (int i = 0; i < 15; i += 3) {
            int first = s.hits().get(i).hit().id();
            assertEquals(0, first % 3);
            assertEquals(List.of(first + 1, first + 2), List.of(s.hits().get(i + 1).hit().id(), s.hits().get(i + 2).hit().id()));
        }
        assertEquals(List.of(), s.findings());
    }

    /** Seeded small sheets: no order of all hits leaves fewer faults than ours; holes come before all forms. */
    @Test
    void noOrderOfAllHitsHasFewerFaults() {
        Random random = new Random(4);
        int hard = 0;
        for (int n = 0; n < CASES; n++) {
            List<SheetHit> hits = crowd(random);
            List<SheetHit> ours = Sequencer.order(Shop.job(hits, THICKNESS_MM)).hits().stream().map(SequencedHit::hit).toList();
            int least = fewest(new ArrayList<>(hits), 0);
            assertEquals(least, faults(ours), "case " + n);
            hard += faults(hits) > least ? 1 : 0;
            List<HitRole> roles = ours.stream().map(SheetHit::role).toList();
            int firstForm = roles.contains(HitRole.FORM) ? roles.indexOf(HitRole.FORM) : roles.size();
            assertTrue(roles.lastIndexOf(HitRole.PIERCE) < firstForm, "case " + n);
        }
        assertTrue(hard > CASES / 3, hard + " cases in which the order matters");
    }

    /** Six round cuts and forms so near to each other that their order matters. */
    private static List<SheetHit> crowd(Random random) {
        List<ToolUse> tools = List.of(form(1, 8, 2, 3 + random.nextInt(20)), form(2, 12, 5, 3 + random.nextInt(20)),
                form(3, 6, -2, 3 + random.nextInt(20)), round(4, 5), round(5, 9));
        List<SheetHit> hits = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            ToolUse use = tools.get(random.nextInt(tools.size()));
            HitRole role = use.number() < 4 ? HitRole.FORM : random.nextBoolean() ? HitRole.PIERCE : HitRole.SLIT;
            hits.add(Shop.hit(i, use, 100 + random.nextInt(90), 100 + random.nextInt(90), role));
        }
        return hits;
    }

    private static int fewest(List<SheetHit> hits, int from) {
        if (from == hits.size()) {
            return faults(hits);
        }
        int best = Integer.MAX_VALUE;
        for (int i = from; i < hits.size(); i++) {
            Collections.swap(hits, from, i);
            best = Math.min(best, fewest(hits, from + 1));
            Collections.swap(hits, from, i);
        }
        return best;
    }

    /** Forms that a later hit comes too near to, counted from circles alone. */
    private static int faults(List<SheetHit> hits) {
        int faults = 0;
        for (int i = 0; i < hits.size(); i++) {
            for (int j = i + 1; j < hits.size(); j++) {
                faults += struck(hits.get(i), hits.get(j)) ? 1 : 0;
            }
        }
        return faults;
    }

    private static boolean struck(SheetHit form, SheetHit later) {
        double keep = form.use().tool().room().keepClearMm();
        boolean same = form.use() == later.use();
        double gap = form.at().distance(later.at()) - form.use().tool().lengthMm() / 2 - later.use().tool().lengthMm() / 2;
        return form.role() == HitRole.FORM && !(same && form.at().equals(later.at()))
                && Math.max(0, gap) < (same ? Math.min(keep, 4 * THICKNESS_MM) : keep);
    }

    private static List<Integer> ids(SequenceJob job) {
        return Sequencer.order(job).hits().stream().map(h -> h.hit().id()).toList();
    }
}
