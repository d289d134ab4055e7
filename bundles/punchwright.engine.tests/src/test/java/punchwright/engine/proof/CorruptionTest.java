// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.ClampArrangement;
import punchwright.engine.proof.Oracle.Answer;
import punchwright.engine.tooling.Tool;

/**
 * Seeded ways of spoiling a good plan: every clearly harmful one is refused, every clearly harmless one proven.
 * {@code -Dpunchwright.corruptions=2000} looks at more than the usual 240.
 */
class CorruptionTest {

    private static final int CASES = Integer.getInteger("punchwright.corruptions", 240);

    private enum Spoiling { MOVED, DROPPED, DOUBLED, ANGLE, TOOL, CLAMP, FORM_ORDER, THICKNESS }

    private final Map<Spoiling, int[]> counts = new EnumMap<>(Spoiling.class);

    @Test
    void harmfulOnesAreCaughtAndHarmlessOnesProven() {
        assertTrue(base().prove().proven(), () -> base().prove().findings().toString());
        Random random = new Random(20);
        for (int i = 0; i < CASES; i++) {
            Spoiling kind = Spoiling.values()[i % Spoiling.values().length];
            SmallPlan plan = base();
            Answer answer = spoil(plan, kind, random);
            boolean proven = plan.prove().proven();
            String where = "case " + i + ", " + kind;
            if (answer != Answer.UNCLEAR) {
                assertEquals(answer == Answer.HARMLESS, proven, () -> where + ": " + plan.prove().findings().stream()
                        .map(f -> f.code() + " " + f.place() + " " + f.message()).toList());
            }
            counts.computeIfAbsent(kind, k -> new int[3])[answer.ordinal()]++;
        }
        counts.forEach((kind, n) -> assertTrue(n[2] <= 0.4 * (n[0] + n[1] + n[2]), kind + ": too few clear answers, " + n[2]));
        assertTrue(counts.values().stream().mapToInt(n -> n[0]).sum() > CASES / 3, "harmful cases");
        assertTrue(counts.values().stream().mapToInt(n -> n[1]).sum() > CASES / 10, "harmless cases");
    }

    /** Two plates and three openings of the square tool in the strip before the clamps. */
    private static SmallPlan base() {
        SmallPlan plan = SmallPlan.of(2, 1);
        for (double x : new double[] {330, 780, 1210}) {
            plan.hits.add(0, new ProofHit(900 + plan.hits.size(), x, 40, 0, SmallPlan.Q10, 0));
        }
        return plan;
    }

    private static Answer spoil(SmallPlan plan, Spoiling kind, Random random) {
        int index = 3 + random.nextInt(plan.hits.size() - 3);
        boolean form = plan.hits.get(index).tool() == SmallPlan.LOUVRE;
        return switch (kind) {
            case MOVED -> formOr(form, moved(plan, index, random));
            case DROPPED -> formOr(form, dropped(plan, index));
            case DOUBLED -> {
                plan.hits.add(index, plan.hits.get(index));
                yield form ? Answer.UNCLEAR : Answer.HARMLESS;
            }
            case ANGLE -> formOr(form, turned(plan, index, random));
            case TOOL -> formOr(form, otherTool(plan, index, random));
            case CLAMP -> clamp(plan, random);
            case FORM_ORDER -> formOrder(plan, random);
            case THICKNESS -> thickness(plan, random);
        };
    }

    /** A form is asked for at one place and angle: any change of its hit is harmful. */
    private static Answer formOr(boolean form, Answer answer) {
        return form ? Answer.HARMFUL : answer;
    }

    private static Answer moved(SmallPlan plan, int index, Random random) {
        double a = random.nextDouble() * 2 * Math.PI;
        plan.change(index, h -> new ProofHit(h.id(), h.xMm() + 0.3 * Math.cos(a), h.yMm() + 0.3 * Math.sin(a), h.angleDeg(),
                h.tool(), 0));
        return edges(plan, plan.hits.get(index));
    }

    private static Answer dropped(SmallPlan plan, int index) {
        return edges(plan, plan.hits.remove(index));
    }

    private static Answer turned(SmallPlan plan, int index, Random random) {
        double by = List.of(5, 15, 30, 45, 90, 180).get(random.nextInt(6));
        plan.change(index, h -> new ProofHit(h.id(), h.xMm(), h.yMm(), h.angleDeg() + by, h.tool(), 0));
        return edges(plan, plan.hits.get(index));
    }

    private static Answer otherTool(SmallPlan plan, int index, Random random) {
        List<Tool> tools = List.of(SmallPlan.R20, SmallPlan.R8, SmallPlan.Q10, SmallPlan.SLIT, SmallPlan.THIN);
        Tool tool = tools.get(random.nextInt(tools.size()));
        plan.change(index, h -> new ProofHit(h.id(), h.xMm(), h.yMm(), h.angleDeg(), tool, 0));
        return edges(plan, plan.hits.get(index));
    }

    /** Clamps are 80 mm wide and 60 deep with 5 mm to keep; the squares of 10 lie at y 40: 50 mm from a clamp's middle. */
    private static Answer clamp(SmallPlan plan, Random random) {
        double first = 40 + random.nextInt(900);
        double second = first + 200 + random.nextInt(700);
        plan.holdings = List.of(new ClampArrangement(List.of(first, second), 0, 2000, false));
        double nearest = plan.hits.stream().filter(h -> h.yMm() == 40)
                .mapToDouble(h -> Math.min(Math.abs(h.xMm() - first), Math.abs(h.xMm() - second))).min().orElseThrow();
        return nearest == 50 ? Answer.UNCLEAR : nearest < 50 ? Answer.HARMFUL : Answer.HARMLESS;
    }

    /** A louvre brought forward stands 2 mm from a slit that comes later when that slit is its own plate's right one. */
    private static Answer formOrder(SmallPlan plan, Random random) {
        int from = plan.first(SmallPlan.LOUVRE) + random.nextInt(2);
        ProofHit form = plan.hits.remove(from);
        int to = random.nextInt(from);
        List<ProofHit> between = List.copyOf(plan.hits.subList(to, from));
        plan.hits.add(to, form);
        boolean struck = between.stream().anyMatch(h -> h.tool() == SmallPlan.SLIT && Math.abs(h.xMm() - form.xMm() - 10.5) < 1e-6
                && Math.abs(h.yMm() - form.yMm()) < 15 + 3 + 2.2);
        return struck ? Answer.HARMFUL : Answer.HARMLESS;
    }

    /**
     * Machine up to 6 mm and 150 kg (2 x 1 m of 7.85 kg/dm3: 9.55 mm); least punch 5 mm wide at 1 t; widest clearance on hand
     * 0.3 mm is 2 per cent at 15 mm; force of 20 x pi x t x 320 MPa reaches 300 kN at 14.9 mm; louvres keep 2 mm to slits cut
     * before and 5 mm to those cut after: up to 1.5 t = 5 mm harmless.
     */
    private static Answer thickness(SmallPlan plan, Random random) {
        plan.thicknessMm = 1.5 + random.nextInt(90) / 10.0;
        return plan.thicknessMm > 5.01 ? Answer.HARMFUL : plan.thicknessMm > 3.3 ? Answer.UNCLEAR : Answer.HARMLESS;
    }

    private static Answer edges(SmallPlan plan, ProofHit hit) {
        return Oracle.edges(plan, new Point(hit.xMm(), hit.yMm()));
    }
}
