// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static punchwright.engine.press.Quantity.FORCE;
import static punchwright.engine.press.Quantity.LENGTH;

import java.util.Optional;

/** Questions of what can be made: smallest hole and slot, webs, tolerances, copper bar. */
final class FeatureQuestions {

    private FeatureQuestions() {
    }

    static void hole(Working w) {
        double t = w.in(Inputs.THICKNESS);
        w.step("hole-by-custom", "d1", LENGTH, Math.max(1, w.in(Inputs.HOLE_FACTOR) * t), "max(1, f * t)",
                w.basis().material() == null ? Sources.PRACTICE : Sources.RECORD);
        w.step("hole-by-stress", "d2", LENGTH, SmallestFeature.byStressMm(t, w.in(Inputs.STRENGTH), w.in(Inputs.PERMITTED)),
                "4 * t * tau / sigma", Sources.PUNCH_STRESS);
        w.result("minimum-hole", "dm", LENGTH, Math.max(w.figures().get(0).value(), w.figures().get(1).value()), "max(d1, d2)",
                Sources.PUNCH_STRESS);
        w.result("preferred-hole", "dv", LENGTH, SmallestFeature.preferredMm(t), "2 * t", Sources.MINIMA);
    }

    static void slot(Working w) {
        double t = w.in(Inputs.THICKNESS);
        double custom = w.step("slot-by-custom", "b1", LENGTH, Math.max(1, 1.2 * w.in(Inputs.HOLE_FACTOR) * t),
                "max(1, 1.2 * f * t)",
                Sources.PRACTICE);
        double stress = w.step("slot-by-stress", "b2", LENGTH,
                SmallestFeature.slotByStressMm(w.in(Inputs.SLOT), t, w.in(Inputs.STRENGTH), w.in(Inputs.PERMITTED)),
                "2 * L * t * tau / (sigma * L - 2 * t * tau)", Sources.PUNCH_STRESS);
        w.result("minimum-slot", "bm", LENGTH, Math.max(custom, stress), "max(b1, b2)", Sources.PUNCH_STRESS);
    }

    static void web(Working w) {
        double t = w.in(Inputs.THICKNESS);
        w.result("least-web", "b1", LENGTH, WebRules.leastWebMm(t), "max(1, t)", Sources.PRACTICE);
        w.result("better-web", "b2", LENGTH, WebRules.betterWebMm(t), "max(2, 2 * t)", Sources.PRACTICE);
        w.result("least-edge", "e1", LENGTH, WebRules.leastEdgeMm(t), "t", Sources.MINIMA);
        w.result("better-edge", "e2", LENGTH, WebRules.betterEdgeMm(t), "1.5 * t", Sources.PRACTICE);
        w.result("to-bend", "eb", LENGTH, WebRules.toBendMm(t, w.in(Inputs.BEND)), "2 * t + r", Sources.PRACTICE);
        w.result("to-form", "ef", LENGTH, WebRules.toFormMm(t), "3 * t", Sources.PRACTICE);
    }

    static void tolerance(Working w) {
        double nominal = w.in(Inputs.NOMINAL);
        w.result("size-deviation", "e1", LENGTH, ReachableTolerance.ofSizeMm(w.in(Inputs.WEAR), w.in(Inputs.EDGE_SCALLOP)),
                "v + s",
                Sources.ARITHMETIC);
        double distance = w.result("distance-deviation", "e2", LENGTH, ReachableTolerance.ofDistanceMm(w.in(Inputs.ACCURACY),
                w.in(Inputs.TURNING), w.in(Inputs.WEAR), w.in(Inputs.EDGE_SCALLOP)), "sqrt(2 * a^2 + 2 * b^2) + v + s",
                Sources.MECHANICS);
        for (GeneralTolerance c : GeneralTolerance.values()) {
            c.plusMinusMm(nominal).ifPresent(v -> w.step("class-" + c.letter(), "T" + c.letter(), LENGTH, v, "",
                    Sources.ISO_2768));
        }
        Optional<GeneralTolerance> finest = ReachableTolerance.finest(nominal, distance);
        finest.ifPresentOrElse(c -> w.find(PressReason.CLASS_REACHED, distance, nominal, c.letter(),
                c.plusMinusMm(nominal).orElseThrow()), () -> w.find(PressReason.NO_CLASS, distance, nominal));
    }

    static void copperBar(Working w) {
        double t = w.in(Inputs.BAR);
        double d = w.in(Inputs.BAR_HOLE);
        w.result("least-hole", "d1", LENGTH, CopperBar.leastHoleMm(t), "t", Sources.PRACTICE);
        w.result("least-edge", "e1", LENGTH, CopperBar.leastEdgeMm(t), "t", Sources.PRACTICE);
        w.result("least-web", "b1", LENGTH, CopperBar.leastWebMm(t), "t", Sources.PRACTICE);
        double force = w.result("force", "F", FORCE, PunchingForce.flatN(CutLength.roundMm(d), t, w.in(Inputs.STRENGTH)),
                "pi * d * t * tau", Sources.FORCE);
        ForceQuestions.stress(w, force, d, w.in(Inputs.PERMITTED));
        w.find(CopperBar.check(w.question(), t, d, w.in(Inputs.EDGE_DISTANCE), w.in(Inputs.WEB)));
    }
}
