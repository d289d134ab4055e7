// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static punchwright.engine.press.Quantity.AREA;
import static punchwright.engine.press.Quantity.COUNT;
import static punchwright.engine.press.Quantity.FORCE;
import static punchwright.engine.press.Quantity.LENGTH;
import static punchwright.engine.press.Quantity.PERCENT;
import static punchwright.engine.press.Quantity.SHARE;

import java.util.ArrayList;
import java.util.List;

/** Questions of die clearance: rules side by side, nearest on hand, edge, slugs. */
final class ClearanceQuestions {

    private ClearanceQuestions() {
    }

    static void clearance(Working w) {
        double t = w.in(Inputs.THICKNESS);
        double need = 0;
        for (ClearanceRule rule : order(w.basis().rule())) {
            double value = byRule(w, rule, t);
            need = rule == w.basis().rule() ? value : need;
        }
        custom(w, t);
        double side = w.result("per-side", "u", LENGTH, need / 2, symbol(w.basis().rule()) + " / 2", Sources.ARITHMETIC);
        double q = w.step("per-side-percent", "qs", PERCENT, 100 * side / t, "100 * u / t", Sources.ARITHMETIC);
        double onHand = w.in(Inputs.ON_HAND);
        if (onHand > 0) {
            w.result("of-need", "pn", PERCENT, 100 * onHand / need, "100 * ch / " + symbol(w.basis().rule()), Sources.ARITHMETIC);
            w.find(DieClearance.effect(w.question(), onHand, need));
            q = w.step("on-hand-percent", "qh", PERCENT, 50 * onHand / t, "50 * ch / t", Sources.ARITHMETIC);
        }
        edge(w, q, t, onHand > 0 ? "qh" : "qs");
        pair(w, side);
    }

    private static List<ClearanceRule> order(ClearanceRule first) {
        List<ClearanceRule> order = new ArrayList<>(List.of(ClearanceRule.values()));
        order.remove(first);
        order.addFirst(first);
        return order;
    }

    private static String symbol(ClearanceRule rule) {
        return switch (rule) {
            case OEHLER_KAISER -> "c1";
            case ALLOWANCE -> "c2";
            case PERCENT -> "c3";
        };
    }

    /** Total clearance by one rule; the shop's per cent of 0 means that none is kept, then the custom stands for it. */
    private static double byRule(Working w, ClearanceRule rule, double t) {
        double tau = w.in(Inputs.STRENGTH);
        switch (rule) {
            case OEHLER_KAISER:
                return w.result("clearance-root", "c1", LENGTH, 2 * DieClearance.oehlerKaiserPerSideMm(w.in(Inputs.C), t, tau),
                        t <= 3 ? "2 * c * t * sqrt(tau / 10)" : "2 * (1.5 * c * t - 0.015) * sqrt(tau / 10)",
                        Sources.CLEARANCE_ROOT);
            case ALLOWANCE:
                double a = w.step("allowance", "a", SHARE, DieClearance.allowance(w.group()), "", Sources.CLEARANCE_ALLOWANCE);
                return w.result("clearance-allowance", "c2", LENGTH, 2 * DieClearance.allowancePerSideMm(a, t), "2 * a * t",
                        Sources.CLEARANCE_ALLOWANCE);
            default:
                double kept = w.in(Inputs.PERCENT_OF_T);
                double p = w.step("percent-used", "qp", PERCENT, kept > 0 ? kept : ClearanceCustom.percent(w.group(), t),
                        kept > 0 ? "q" : "", kept > 0 ? Sources.RECORD : Sources.PRACTICE);
                return w.result("clearance-percent", "c3", LENGTH, DieClearance.percentTotalMm(p, t), "qp / 100 * t",
                        kept > 0 ? Sources.RECORD : Sources.PRACTICE);
        }
    }

    private static void custom(Working w, double t) {
        double p = w.step("custom-percent", "qc", PERCENT, ClearanceCustom.percent(w.group(), t), "", Sources.PRACTICE);
        w.result("clearance-custom", "c4", LENGTH, DieClearance.percentTotalMm(p, t), "qc / 100 * t", Sources.PRACTICE);
    }

    /** The edge that a clearance gives; measured between 5 and 9 per cent a side, so outside a warning. */
    private static void edge(Working w, double percent, double t, String symbol) {
        double q = Math.clamp(percent, EdgeQuality.LEAST_PERCENT, EdgeQuality.LARGEST_PERCENT);
        w.step("measured-percent", "qm", PERCENT, q, "max(5, min(9, " + symbol + "))", Sources.EDGE);
        w.result("burnish", "bb", LENGTH, EdgeQuality.burnishMm(q, t), "(0.53 - 0.15 / 4 * (qm - 5)) / 0.7 * t", Sources.EDGE);
        w.result("rollover", "br", LENGTH, EdgeQuality.rolloverMm(q, t), "(0.07 + 0.02 / 4 * (qm - 5)) / 0.7 * t", Sources.EDGE);
        w.result("burr", "bg", LENGTH, EdgeQuality.burrMm(t), "0.1 * t", Sources.EDGE);
        if (q != percent) {
            w.find(PressReason.EDGE_UNMEASURED, percent, EdgeQuality.LEAST_PERCENT, EdgeQuality.LARGEST_PERCENT);
        }
    }

    private static void pair(Working w, double side) {
        double d = w.in(Inputs.SIZE);
        if (d > 0) {
            w.result("die-of-hole", "Dd", LENGTH, DieClearance.dieOfHoleMm(d, side), "d + 2 * u", Sources.CLEARANCE_ALLOWANCE);
            w.result("punch-of-blank", "dp", LENGTH, DieClearance.punchOfBlankMm(d, side), "d - 2 * u",
                    Sources.CLEARANCE_ALLOWANCE);
        }
    }

    static void slug(Working w) {
        double d = w.in(Inputs.PUNCH);
        double t = w.in(Inputs.THICKNESS);
        double area = w.step("punch-area", "A", AREA, Math.PI * d * d / 4, "pi * d^2 / 4", Sources.GEOMETRY);
        w.result("vacuum", "Fv", FORCE, SlugPulling.vacuumN(area), "0.101325 * A", Sources.MECHANICS);
        double need = w.step("clearance-root", "c1", LENGTH,
                2 * DieClearance.oehlerKaiserPerSideMm(DieClearance.USUAL_C, t, w.in(Inputs.STRENGTH)),
                t <= 3 ? "2 * 0.01 * t * sqrt(tau / 10)" : "2 * (0.015 * t - 0.015) * sqrt(tau / 10)", Sources.CLEARANCE_ROOT);
        List<SlugPulling.Cause> causes = SlugPulling.causes(w.group(), t, d, w.in(Inputs.CLEARANCE), need, w.yes(Inputs.OILED));
        w.result("causes", "nc", COUNT, causes.size(), "", Sources.SLUG);
        w.find(SlugPulling.check(w.question(), causes));
    }
}
