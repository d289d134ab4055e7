// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static punchwright.engine.press.Quantity.ANGLE;
import static punchwright.engine.press.Quantity.COUNT;
import static punchwright.engine.press.Quantity.LENGTH;

/** Questions of nibbling and slitting: pitch, hits, equal steps, what falls out. */
final class NibbleQuestions {

    private NibbleQuestions() {
    }

    static void nibble(Working w) {
        double r = w.step("tool-radius", "r", LENGTH, w.in(Inputs.TOOL) / 2, "D / 2", Sources.GEOMETRY);
        double h = w.in(Inputs.SCALLOP);
        if (h >= r) {
            throw QuestionException.of(PressReason.SCALLOP_LARGE, w.question(), h, r);
        }
        double pitch = w.result("pitch", "p", LENGTH, Scallop.straightPitchMm(r, h), "2 * sqrt(2 * r * h - h^2)",
                Sources.GEOMETRY);
        w.result("hits", "n", COUNT, Nibbling.straightHits(w.in(Inputs.EDGE), r, h), "ceil(L / p) + 1", Sources.GEOMETRY);
        w.result("even-pitch", "pe", LENGTH, w.in(Inputs.EDGE) / (w.figures().getLast().value() - 1), "L / (n - 1)",
                Sources.ARITHMETIC);
        double arc = w.in(Inputs.ARC);
        if (arc > r + 1e-9) {
            inside(w, arc, r, h);
        }
        if (arc > 0) {
            outside(w, arc, r, h);
        }
        if (w.in(Inputs.SHEET) > 0) {
            w.find(Nibbling.check(w.question(), pitch, w.in(Inputs.SHEET)));
        }
    }

    private static void inside(Working w, double arc, double r, double h) {
        w.step("inside-path", "m1", LENGTH, arc - r, "R - r", Sources.GEOMETRY);
        w.step("inside-step", "th1", ANGLE, Math.toDegrees(Scallop.insideStepRad(arc, r, h)),
                "2 * acos(max(0, min(1, (m1^2 + (R - h)^2 - r^2) / (2 * m1 * (R - h)))))", Sources.GEOMETRY);
        boolean whole = w.in(Inputs.ARC_ANGLE) >= 360;
        w.result("inside-hits", "n1", COUNT, whole ? Nibbling.openingHits(arc, r, h)
                : Nibbling.insideArcHits(arc, w.in(Inputs.ARC_ANGLE), r, h), whole ? "ceil(360 / th1)" : "ceil(beta / th1) + 1",
                Sources.GEOMETRY);
    }

    private static void outside(Working w, double arc, double r, double h) {
        w.step("outside-path", "m2", LENGTH, arc + r, "R + r", Sources.GEOMETRY);
        w.step("outside-step", "th2", ANGLE, Math.toDegrees(Scallop.outsideStepRad(arc, r, h)),
                "2 * acos(max(0, min(1, (m2^2 + (R + h)^2 - r^2) / (2 * m2 * (R + h)))))", Sources.GEOMETRY);
        boolean whole = w.in(Inputs.ARC_ANGLE) >= 360;
        w.result("outside-hits", "n2", COUNT, whole ? Nibbling.discHits(arc, r, h)
                : Nibbling.outsideArcHits(arc, w.in(Inputs.ARC_ANGLE), r, h), whole ? "ceil(360 / th2)" : "ceil(beta / th2) + 1",
                Sources.GEOMETRY);
    }

    static void slit(Working w) {
        double l = w.in(Inputs.CUT);
        double a = w.in(Inputs.TOOL_LENGTH);
        double o = w.in(Inputs.OVERLAP);
        if (o >= a || w.in(Inputs.TOOL_WIDTH) > 0 && o >= w.in(Inputs.TOOL_WIDTH) && w.in(Inputs.SLIT_WIDTH) > 0) {
            throw QuestionException.of(PressReason.OVERLAP_LARGE, w.question(), o, a);
        }
        int n = HitCount.along(l, a, o);
        w.result("hits", "n", COUNT, n, n == 1 ? "1" : "ceil((L - a) / (a - o)) + 1", Sources.ARITHMETIC);
        if (n > 1) {
            w.result("even-pitch", "p", LENGTH, HitCount.pitchMm(l, a, n), "(L - a) / (n - 1)", Sources.ARITHMETIC);
            w.result("even-overlap", "oe", LENGTH, a - HitCount.pitchMm(l, a, n), "a - p", Sources.ARITHMETIC);
        }
        double last = w.step("last-step", "pl", LENGTH, HitCount.lastStepMm(l, a, o), n == 1 ? "L" : "p", Sources.ARITHMETIC);
        w.step("uneven-last-step", "pu", LENGTH, HitCount.unevenLastStepMm(l, a, o), n == 1 ? "L" : "L - a - (n - 2) * (a - o)",
                Sources.ARITHMETIC);
        if (w.in(Inputs.SHEET) > 0 && n > 1 && last < w.in(Inputs.SHEET) - 1e-9) {
            w.find(PressReason.SLIVER, last, w.in(Inputs.SHEET));
        }
        opening(w, n, a, o);
    }

    private static void opening(Working w, int alongX, double a, double o) {
        double side = w.in(Inputs.SLIT_WIDTH);
        if (side <= 0) {
            return;
        }
        double b = w.step("tool-side", "b2", LENGTH, w.in(Inputs.TOOL_WIDTH) > 0 ? w.in(Inputs.TOOL_WIDTH) : a,
                w.in(Inputs.TOOL_WIDTH) > 0 ? "b" : "a", Sources.ARITHMETIC);
        int across = HitCount.along(side, b, o);
        w.step("hits-across", "ny", COUNT, across, across == 1 ? "1" : "ceil((B - b2) / (b2 - o)) + 1", Sources.ARITHMETIC);
        w.result("hits-all", "na", COUNT, alongX * across, "n * ny", Sources.ARITHMETIC);
        w.result("hits-outline", "no", COUNT, HitCount.outline(alongX, across),
                alongX < 2 || across < 2 ? "n * ny" : "2 * (n + ny) - 4", Sources.ARITHMETIC);
        w.result("slug-length", "sl", LENGTH, Math.max(0, w.in(Inputs.CUT) - 2 * a), "max(0, L - 2 * a)", Sources.GEOMETRY);
        w.result("slug-width", "sw", LENGTH, Math.max(0, side - 2 * b), "max(0, B - 2 * b2)", Sources.GEOMETRY);
    }
}
