// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.Optional;

/**
 * Metric coarse threads with their holes, mm.
 *
 * <p>Symbols: d thread diameter, P pitch. Core hole for cutting {@code d - P} rounded as in DIN 336; for rolling
 * {@code d - P / 2} less rounding (from memory); through holes ISO 273 fine, medium, coarse; hole for thread-forming screws in
 * steel by length of engagement, DIN 7500-2 (guide values). Range: M2.5 to M8. Worked example: M5: pitch 0.8, cut core 4.2,
 * through hole medium 5.5.
 */
public enum ThreadSize {
    M2_5(2.5, 0.45, 2.05, 2.3, new double[] { 2.7, 2.9, 3.1 }, new double[][] { { 2.5, 2.25 }, { 5, 2.3 } }),
    M3(3, 0.5, 2.5, 2.8, new double[] { 3.2, 3.4, 3.6 }, new double[][] { { 1.7, 2.7 }, { 6, 2.75 } }),
    M4(4, 0.7, 3.3, 3.7, new double[] { 4.3, 4.5, 4.8 }, new double[][] { { 2.2, 3.6 }, { 4, 3.65 }, { 6.3, 3.7 } }),
    M5(5, 0.8, 4.2, 4.65, new double[] { 5.3, 5.5, 5.8 }, new double[][] { { 3, 4.5 }, { 4, 4.55 }, { 6, 4.6 }, { 10, 4.65 } }),
    M6(6, 1, 5, 5.55, new double[] { 6.4, 6.6, 7 }, new double[][] { { 2.5, 5.4 }, { 3.5, 5.45 }, { 5, 5.55 }, { 6.5, 5.5 },
        { 10, 5.55 } }),
    M8(8, 1.25, 6.8, 7.4, new double[] { 8.4, 9, 10 }, new double[][] { { 3.5, 7.25 }, { 4, 7.3 }, { 10, 7.4 } });

    private final double diameterMm;
    private final double pitchMm;
    private final double cutCoreMm;
    private final double rolledCoreMm;
    private final double[] throughMm;
    private final double[][] formingMm;

    ThreadSize(double diameterMm, double pitchMm, double cutCoreMm, double rolledCoreMm, double[] throughMm,
            double[][] formingMm) {
        this.diameterMm = diameterMm;
        this.pitchMm = pitchMm;
        this.cutCoreMm = cutCoreMm;
        this.rolledCoreMm = rolledCoreMm;
        this.throughMm = throughMm;
        this.formingMm = formingMm;
    }

    /** The thread of a nominal diameter in mm; empty where the table has none. */
    public static Optional<ThreadSize> of(double diameterMm) {
        for (ThreadSize s : values()) {
            if (Math.abs(s.diameterMm - diameterMm) < 1e-9) {
                return Optional.of(s);
            }
        }
        return Optional.empty();
    }

    public double diameterMm() {
        return diameterMm;
    }

    public double pitchMm() {
        return pitchMm;
    }

    /** Core hole for a cut thread, DIN 336. */
    public double cutCoreMm() {
        return cutCoreMm;
    }

    /** Core hole for a rolled thread, from memory. */
    public double rolledCoreMm() {
        return rolledCoreMm;
    }

    /** Through hole, ISO 273 medium. */
    public double throughMediumMm() {
        return throughMm[1];
    }

    /** Hole for thread-forming screws in steel, DIN 7500-2; the last row beyond the table's engagement. */
    public double formingHoleMm(double engagementMm) {
        for (double[] row : formingMm) {
            if (engagementMm <= row[0] + 1e-9) {
                return row[1];
            }
        }
        return formingMm[formingMm.length - 1][1];
    }
}
