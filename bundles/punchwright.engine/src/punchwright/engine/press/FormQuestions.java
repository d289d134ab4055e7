// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static punchwright.engine.press.Quantity.FORCE;
import static punchwright.engine.press.Quantity.LENGTH;
import static punchwright.engine.press.Quantity.SHARE;

import java.util.Optional;

/** Questions of forming: louvres, embosses, coins, half-shears, collars, countersinks. */
final class FormQuestions {

    private FormQuestions() {
    }

    static void forming(Working w) {
        double t = w.in(Inputs.FORM_SHEET);
        double l = w.in(Inputs.FORMED);
        double lance = w.result("lance", "F1", FORCE, FormingForce.lanceN(l, t, w.in(Inputs.STRENGTH)), "1.4 * L * t * tau",
                Sources.PRACTICE);
        w.result("emboss", "F2", FORCE, FormingForce.embossN(l, t, w.in(Inputs.TENSILE)), "0.75 * L * t * Rm", Sources.PRACTICE);
        w.result("half-shear-force", "F3", FORCE, PunchingForce.flatN(l, t, w.in(Inputs.STRENGTH)), "L * t * tau", Sources.FORCE);
        if (w.in(Inputs.COINED) > 0) {
            w.result("coining", "F4", FORCE, FormingForce.coiningN(w.in(Inputs.COINED), w.in(Inputs.TENSILE)), "2 * A * Rm",
                    Sources.PRACTICE);
        }
        w.step("penetration", "K", SHARE, PunchingForce.penetration(w.group()), "", Sources.FORCE);
        w.result("half-shear-limit", "hs", LENGTH, FormingRules.halfShearLimitMm(w.group(), t), "K * t", Sources.FORCE);
        double highest = w.result("highest-louvre", "hl", LENGTH, FormingRules.highestLouvreMm(t), "3 * t", Sources.PRACTICE);
        distances(w, t);
        w.find(FormingRules.checkHeight(w.question(), w.in(Inputs.HEIGHT), highest));
        ForceQuestions.limit(w, "F1", lance, w.in(Inputs.LIMIT));
    }

    private static void distances(Working w, double t) {
        w.result("to-form", "ef", LENGTH, WebRules.toFormMm(t), "3 * t", Sources.PRACTICE);
        if (w.in(Inputs.FORM_WIDTH) > 0) {
            w.result("louvre-pitch", "pl2", LENGTH, FormingRules.louvrePitchMm(w.in(Inputs.FORM_WIDTH), t), "w + 4 * t",
                    Sources.PRACTICE);
        }
        if (w.in(Inputs.DIE) > 0) {
            w.result("to-next-hit", "en", LENGTH, FormingRules.toNextHitMm(w.in(Inputs.DIE)), "Dd / 2", Sources.PRACTICE);
            w.result("to-clamp", "ec", LENGTH, FormingRules.toClampMm(w.in(Inputs.DIE), w.in(Inputs.DEAD_ZONE)), "Dd / 2 + z",
                    Sources.PRACTICE);
        }
    }

    static void collar(Working w) {
        double t = w.in(Inputs.COLLAR_SHEET);
        Optional<ThreadSize> known = ThreadSize.of(w.in(Inputs.THREAD));
        if (known.isEmpty()) {
            w.find(PressReason.NO_THREAD, w.in(Inputs.THREAD));
            return;
        }
        ThreadSize size = known.get();
        double pitch = w.step("thread-pitch", "P", LENGTH, size.pitchMm(), "", Sources.DIN_336);
        double core = w.result("cut-core", "di", LENGTH, size.cutCoreMm(), "", Sources.DIN_336);
        w.result("rolled-core", "dr", LENGTH, size.rolledCoreMm(), "", Sources.DIN_336);
        w.result("through-hole", "dh", LENGTH, size.throughMediumMm(), "", Sources.ISO_273);
        double least = w.result("least-height", "Ha", LENGTH, ThreadCollar.leastHeightMm(pitch), "3 * P", Sources.PRACTICE);
        double highest = w.result("highest-collar", "Hb", LENGTH, ThreadCollar.highestMm(t), "2.5 * t", Sources.PRACTICE);
        boolean given = w.in(Inputs.COLLAR_HEIGHT) > 0;
        double height = w.step("height-used", "Hc", LENGTH, given ? w.in(Inputs.COLLAR_HEIGHT) : Math.min(least, highest),
                given ? "H" : "min(Ha, Hb)", Sources.ARITHMETIC);
        if (height < least - 1e-9) {
            w.find(PressReason.COLLAR_LOW, height, least, pitch);
        }
        w.result("forming-screw-hole", "ds", LENGTH, size.formingHoleMm(height), "", Sources.DIN_7500);
        hole(w, core, height, t);
    }

    private static void hole(Working w, double core, double height, double t) {
        double mean = w.step("mean-diameter", "D", LENGTH, core + t, "di + t", Sources.GEOMETRY);
        double d0 = ThreadCollar.coreMm(mean, height, w.in(Inputs.DIE_RADIUS), t);
        w.find(ThreadCollar.check(w.question(), w.group(), mean, d0, height, t));
        if (d0 > 0) {
            w.result("hole-before", "d0", LENGTH, d0, "D - 2 * (Hc - 0.43 * r - 0.72 * t)", Sources.FLANGING);
            w.result("stretch", "st", SHARE, ThreadCollar.stretch(mean, d0), "D / d0", Sources.FLANGING);
            double force = w.result("collar-force", "F", FORCE, FormingForce.collarN(mean, d0, t, w.in(Inputs.TENSILE)),
                    "1.1 * pi * t * Rm * (D - d0)", Sources.FLANGING);
            ForceQuestions.limit(w, "F", force, w.in(Inputs.LIMIT));
        }
        double half = w.step("wall", "tw", LENGTH, t / 2, "t / 2", Sources.PRACTICE);
        double outer = w.step("outer-ironed", "do", LENGTH, core + 2 * half, "di + 2 * tw", Sources.GEOMETRY);
        w.result("hole-before-ironed", "d1", LENGTH, ThreadCollar.ironedCoreMm(core, outer, height, t),
                "sqrt(max(0, do^2 - (do^2 - di^2) * Hc / t))", Sources.GEOMETRY);
    }

    static void countersink(Working w) {
        double head = w.in(Inputs.HEAD);
        double hole = w.in(Inputs.HOLE);
        double t = w.in(Inputs.SINK_SHEET);
        if (hole >= head) {
            throw QuestionException.of(PressReason.HEAD_SMALL, w.question(), hole, head);
        }
        double depth = w.result("depth", "hc", LENGTH, Countersink.depthMm(head, hole, w.in(Inputs.CONE)),
                "(D - d) / (2 * tan(alpha / 2))",
                Sources.GEOMETRY);
        w.result("least-thickness", "tl", LENGTH, Countersink.leastThicknessMm(depth), "hc / 0.9", Sources.PRACTICE);
        double volume = Countersink.volumeMm3(head, hole, depth);
        w.result("hole-before", "d0", LENGTH, Countersink.holeBeforeMm(hole, volume, t),
                "sqrt(d^2 + hc / (3 * t) * (D^2 + D * d - 2 * d^2))", Sources.GEOMETRY);
        double force = w.result("coining", "F", FORCE, FormingForce.coiningN(Math.PI / 4 * (head * head - hole * hole),
                w.in(Inputs.TENSILE)), "2 * pi / 4 * (D^2 - d^2) * Rm", Sources.PRACTICE);
        w.find(Countersink.check(w.question(), depth, t));
        ForceQuestions.limit(w, "F", force, w.in(Inputs.LIMIT));
    }
}
