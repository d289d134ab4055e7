// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.Optional;

/**
 * Which class of general tolerances punching reaches for a size.
 *
 * <p>Symbols, all plus or minus in mm: a positioning of the machine, b turning of the tool, s scallop height of nibbled edges
 * (full, as it lies on one side), v wear and grinding of the punch. One hole: {@code e = v + s}. Distance of two features, each
 * placed anew: {@code e = sqrt(2 a^2 + 2 b^2) + v + s}; errors of position that do not know of each other add by squares, the
 * others in full. The finest class of ISO 2768-1, Table 1 whose value is at least e is reachable. Range: sizes 0.5 to 4000 mm,
 * without reposition (each reposition adds its own a). Source: addition of independent errors (ISO/IEC Guide 98-3, 5.1.2).
 * Worked example: a 0.1, all others 0: e 0.1414, so at 100 mm class f (0.15).
 */
public final class ReachableTolerance {

    private ReachableTolerance() {
    }

    /** Deviation of a single size, {@code v + s} in mm. */
    public static double ofSizeMm(double wearMm, double scallopMm) {
        return wearMm + scallopMm;
    }

    /** Deviation of the distance of two features, {@code sqrt(2 a^2 + 2 b^2) + v + s} in mm. */
    public static double ofDistanceMm(double positioningMm, double turningMm, double wearMm, double scallopMm) {
        return Math.sqrt(2 * positioningMm * positioningMm + 2 * turningMm * turningMm) + ofSizeMm(wearMm, scallopMm);
    }

    /** Finest class that is kept; empty where none is or the standard gives none for the size. */
    public static Optional<GeneralTolerance> finest(double nominalMm, double deviationMm) {
        for (GeneralTolerance c : GeneralTolerance.values()) {
            if (c.plusMinusMm(nominalMm).orElse(-1) >= deviationMm - 1e-9) {
                return Optional.of(c);
            }
        }
        return Optional.empty();
    }
}
