// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static punchwright.engine.press.Quantity.FORCE;
import static punchwright.engine.press.Quantity.LENGTH;
import static punchwright.engine.press.Quantity.MOMENT;
import static punchwright.engine.press.Quantity.PERCENT;
import static punchwright.engine.press.Quantity.POWER;
import static punchwright.engine.press.Quantity.SHARE;
import static punchwright.engine.press.Quantity.STRESS;
import static punchwright.engine.press.Quantity.WORK;

/** Questions of force: punching, shear of the punch, stripping, work, largest thickness, multi-tools. */
final class ForceQuestions {

    private static final double N_PER_KN = 1000;

    private ForceQuestions() {
    }

    static void force(Working w) {
        double t = w.in(Inputs.THICKNESS);
        double cut = w.step("cut-in-all", "Ls", LENGTH, CutLength.clusterMm(w.in(Inputs.CUT),
                (int) Math.round(w.in(Inputs.PUNCHES))),
                "n * L", Sources.ARITHMETIC);
        double flat = w.step("flat-force", "F0", FORCE, PunchingForce.flatN(cut, t, w.in(Inputs.STRENGTH)), "Ls * t * tau",
                Sources.FORCE);
        double k = shearFactor(w, t);
        double force = w.result("force", "F", FORCE, flat * k, "F0 * k", Sources.FORCE);
        double worn = w.result("worn-force", "Fw", FORCE, force * w.in(Inputs.WORN), "F * w", Sources.WORN);
        limit(w, "Fw", worn, w.in(Inputs.LIMIT));
    }

    private static double shearFactor(Working w, double t) {
        double h = w.in(Inputs.SHEAR_HEIGHT);
        if (h <= 0) {
            return w.step("shear-factor", "k", SHARE, 1, "1", Source.derived("flat face"));
        }
        double penetration = w.step("penetration", "K", SHARE, PunchingForce.penetration(w.group()), "", Sources.FORCE);
        double byFormula = w.step("shear-factor-formula", "kf", SHARE, PunchingForce.shearFactorByFormula(penetration, t, h),
                "K * t / (K * t + h)", Sources.SHEAR);
        w.step("shear-factor-large", "kl", SHARE, PunchingForce.largeShearFactor(penetration, t, h), "min(1, K * t / h)",
                Sources.LARGE_SHEAR);
        double used = w.step("shear-factor", "k", SHARE, PunchingForce.shearFactor(w.group(), t, h), "max(0.5, kf)",
                Sources.PRACTICE);
        if (byFormula < used) {
            w.find(PressReason.SHEAR_CAPPED, byFormula, used);
        }
        return used;
    }

    static void shear(Working w) {
        double l = w.in(Inputs.SLOT);
        double width = w.in(Inputs.SLIT_WIDTH);
        double h = w.in(Inputs.SHEAR_HEIGHT);
        double band = w.step("band", "b", LENGTH, PunchingForce.penetration(w.group()) * w.in(Inputs.THICKNESS), "",
                Sources.FORCE);
        double s = w.step("in-band", "sb", SHARE, h <= band ? 1 : band / h, h <= band ? "1" : "b / h", Sources.GEOMETRY);
        if (width <= 0) {
            w.result("one-sided", "ko", SHARE, SlopedFace.roundOneSided(band, h), "acos(1 - 2 * sb) / 180", Sources.GEOMETRY);
            w.result("roof", "kr", SHARE, SlopedFace.roundRoof(band, h), "2 * acos(1 - sb) / 180", Sources.GEOMETRY);
        } else {
            String flat = s >= 1 ? "1" : null;
            w.result("one-sided", "ko", SHARE, SlopedFace.rectangleOneSided(l, width, band, h),
                    flat != null ? flat : "(B + 2 * L * sb) / (2 * (L + B))", Sources.GEOMETRY);
            w.result("roof", "kr", SHARE, SlopedFace.rectangleRoof(l, width, band, h),
                    flat != null ? flat : "(2 * B + 2 * L * sb) / (2 * (L + B))", Sources.GEOMETRY);
        }
        w.result("shear-factor-formula", "kf", SHARE,
                PunchingForce.shearFactorByFormula(PunchingForce.penetration(w.group()), w.in(Inputs.THICKNESS), h),
                        "b / (b + h)",
                Sources.SHEAR);
    }

    static void strip(Working w) {
        double flat = w.step("flat-force", "F", FORCE,
                PunchingForce.flatN(w.in(Inputs.CUT), w.in(Inputs.THICKNESS), w.in(Inputs.STRENGTH)), "L * t * tau",
                        Sources.FORCE);
        double byShare = w.result("strip", "Fs", FORCE, StrippingForce.byShareN(flat, w.in(Inputs.STRIP_SHARE)), "s * F",
                Sources.STRIP_SHARE);
        w.result("strip-by-area", "Fa", FORCE, StrippingForce.byEdgeAreaN(w.in(Inputs.CUT), w.in(Inputs.THICKNESS)),
                "24.13 * L * t",
                Sources.STRIP_AREA);
        limit(w, "Fs", byShare, w.in(Inputs.LIMIT));
    }

    static void work(Working w) {
        double t = w.in(Inputs.THICKNESS);
        double flat = w.step("flat-force", "F", FORCE, PunchingForce.flatN(w.in(Inputs.CUT), t, w.in(Inputs.STRENGTH)),
                "L * t * tau",
                Sources.FORCE);
        double work = w.result("work", "W", WORK, PunchWork.joule(w.in(Inputs.WORK_SHARE), flat, t), "x * F * t / 1000",
                Sources.WORK);
        w.result("power", "P", POWER, PunchWork.watt(work, w.in(Inputs.RATE_PER_MIN), w.in(Inputs.EFFICIENCY)),
                "W * z / (60 * eta)",
                Sources.MECHANICS);
    }

    static void thickness(Working w) {
        double tau = w.in(Inputs.STRENGTH);
        double byForce = w.step("thickness-by-force", "tf", LENGTH,
                LargestThickness.byForceMm(w.in(Inputs.FORCE_ON_HAND), w.in(Inputs.CUT), tau, w.in(Inputs.WORN)),
                        "F / (L * tau * w)",
                Sources.FORCE);
        double d = w.in(Inputs.SIZE);
        if (d <= 0) {
            w.result("largest-thickness", "tm", LENGTH, byForce, "tf", Sources.FORCE);
        } else {
            double byStress = w.step("thickness-by-stress", "ts", LENGTH, LargestThickness.byStressMm(d, tau,
                    w.in(Inputs.PERMITTED)),
                    "d * sigma / (4 * tau)", Sources.PUNCH_STRESS);
            w.result("largest-thickness", "tm", LENGTH, Math.min(byForce, byStress), "min(tf, ts)", Sources.FORCE);
        }
        w.find(Inputs.THICKNESS.check(w.question(), w.figures().getLast().value()));
    }

    static void multiTool(Working w) {
        int n = (int) Math.round(w.in(Inputs.INSERTS));
        double insert = w.result("largest-insert", "d", LENGTH, MultiTool.largestInsertMm(w.in(Inputs.OUTER), n,
                w.in(Inputs.WALL)),
                "(D * sin(180 / n) - w * (2 * sin(180 / n) + 1)) / (1 + sin(180 / n))", Sources.GEOMETRY);
        if (insert <= 0) {
            throw QuestionException.of(PressReason.NO_ROOM, w.question(), n, w.in(Inputs.OUTER), w.in(Inputs.WALL));
        }
        double ring = w.step("ring-radius", "e", LENGTH, MultiTool.ringRadiusMm(w.in(Inputs.OUTER), insert, w.in(Inputs.WALL)),
                "(D - d) / 2 - w", Sources.GEOMETRY);
        double f = w.in(Inputs.INSERT_FORCE);
        if (f > 0) {
            w.result("tilt", "M", MOMENT, MultiTool.tiltingMomentNm(f, ring), "F * e / 1000", Sources.MECHANICS);
            limit(w, "F", f, w.in(Inputs.LIMIT));
        }
    }

    /** The share of a limit, and a warning above it; nothing without a limit. */
    static void limit(Working w, String symbol, double forceN, double limitN) {
        if (limitN <= 0) {
            return;
        }
        double percent = w.result("of-limit", "pl", PERCENT, 100 * forceN / limitN, "100 * " + symbol + " / Fl",
                Sources.ARITHMETIC);
        if (percent > 100 + 1e-9) {
            w.find(PressReason.OVER_LIMIT, forceN / N_PER_KN, limitN / N_PER_KN, percent);
        }
    }

    /** Stress of a round punch with a warning above what is permitted. */
    static void stress(Working w, double forceN, double diameterMm, double permittedMPa) {
        double stress = w.result("punch-stress", "sp", STRESS,
                SmallestFeature.punchStressMPa(forceN, Math.PI * diameterMm * diameterMm / 4), "F / (pi * d^2 / 4)",
                Sources.PUNCH_STRESS);
        if (stress > permittedMPa) {
            w.find(PressReason.PUNCH_STRESS, stress, permittedMPa);
        }
    }
}
