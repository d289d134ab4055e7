// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static punchwright.engine.press.Quantity.COUNT;
import static punchwright.engine.press.Quantity.MONEY;
import static punchwright.engine.press.Quantity.SHARE;

/** Questions of wear: hits between grinds, grinds, cost of a hit. */
final class LifeQuestions {

    private LifeQuestions() {
    }

    static void life(Working w) {
        double t = w.in(Inputs.THICKNESS);
        double least = w.step("table-least", "Ta", COUNT, PunchLife.leastHits(w.group()), "", Sources.PRACTICE);
        double most = w.step("table-most", "Tb", COUNT, PunchLife.mostHits(w.group()), "", Sources.PRACTICE);
        double factor = w.step("life-factors", "kn", SHARE, PunchLife.factor(t, w.yes(Inputs.DRY), w.yes(Inputs.NIBBLED)),
                "min(1, 2 / t)" + (w.yes(Inputs.DRY) ? " * 0.5" : "") + (w.yes(Inputs.NIBBLED) ? " * 0.6" : ""),
                        Sources.PRACTICE);
        double m = w.in(Inputs.LIFE_FACTOR);
        w.result("life", "Nm", COUNT, PunchLife.middleHits(w.group()) * factor * m, "(Ta + Tb) / 2 * kn * m", Sources.PRACTICE);
        w.result("life-least", "Na", COUNT, least * factor * m, "Ta * kn * m", Sources.PRACTICE);
        w.result("life-most", "Nb", COUNT, most * factor * m, "Tb * kn * m", Sources.PRACTICE);
    }

    static void regrind(Working w) {
        boolean given = w.in(Inputs.HITS) > 0;
        double n = w.step("hits-per-grind", "N", COUNT, given ? w.in(Inputs.HITS) : PunchLife.middleHits(w.group()), given ? "Ng"
                : "",
                given ? Sources.RECORD : Sources.PRACTICE);
        int grinds = RegrindPlan.grinds(w.in(Inputs.RESERVE), w.in(Inputs.PER_GRIND));
        w.result("grinds", "k", COUNT, grinds, "floor(G / g)", Sources.ARITHMETIC);
        w.result("hits-in-all", "Nt", COUNT, RegrindPlan.hitsInAll(n, grinds), "N * (k + 1)", Sources.ARITHMETIC);
        w.result("cost-per-hit", "cp", MONEY,
                ToolLife.costPerHit(w.in(Inputs.PRICE), w.in(Inputs.RESIDUAL), grinds, w.in(Inputs.GRIND_COST), n),
                "(P - S + k * Cg) / ((k + 1) * N)", Sources.ARITHMETIC);
        w.result("cost-per-thousand", "ct", MONEY, 1000 * w.figures().getLast().value(), "1000 * cp", Sources.ARITHMETIC);
        w.result("hits-to-grind", "nl", COUNT, Math.max(0, ToolLife.hitsLeft(n, 1, w.in(Inputs.SINCE))), "max(0, N - sg)",
                Sources.ARITHMETIC);
        w.result("die-grinds-least", "ka", COUNT, RegrindPlan.leastDieGrinds(grinds), "ceil(k / 3)", Sources.GRINDING);
        w.result("die-grinds-most", "kb", COUNT, RegrindPlan.mostDieGrinds(grinds), "ceil(k / 2)", Sources.GRINDING);
    }
}
