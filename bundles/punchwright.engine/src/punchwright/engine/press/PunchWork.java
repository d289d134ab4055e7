// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Work of a hit and power of a run of hits.
 *
 * <p>Symbols: x 0.4 to 0.7 share of the thickness over which the force acts at its peak (0.6 usual; lower for hard sheet),
 * F force [N], t [mm], n hits a minute, eta efficiency. Formula: {@code W = x F t / 1000} [J], {@code P = W n / (60 eta)}
 * [W]. Shear lowers the force, not the work. Range: x 0.4 to 0.7, eta above 0 up to 1. Source: Hellwig, Semlinger, Spanlose
 * Fertigung: Stanzen, from memory. Worked example: x 0.6, F 100 800 N, t 2 gives 120.96 J; at 300 a minute 604.8 W.
 */
public final class PunchWork {

    public static final double USUAL_SHARE = 0.6;

    private PunchWork() {
    }

    /** {@code x F t} in J. */
    public static double joule(double share, double forceN, double thicknessMm) {
        return share * forceN * thicknessMm / 1000;
    }

    /** {@code W n / (60 eta)} in W. */
    public static double watt(double workJ, double hitsPerMin, double efficiency) {
        return workJ * hitsPerMin / 60 / efficiency;
    }
}
