// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.Objects;

/**
 * How a drawing is read.
 *
 * @param toleranceMm    end points closer than this are one, above 0 to 10 mm
 * @param mmPerUnit      mm of one drawing unit, above 0; NaN to take what the drawing says
 * @param layerRules     meaning of the layers
 * @param hiddenLayers   whether layers that are off or frozen, and invisible entities, are read as well
 * @param filledAreasCut whether the outlines of filled areas (SOLID, TRACE) are cut; else they come as uncut lines
 * @param mostCurves     limit for the curves after unfolding blocks, above 0
 */
public record DrawingOptions(double toleranceMm, double mmPerUnit, LayerRules layerRules, boolean hiddenLayers,
        boolean filledAreasCut, long mostCurves) {

    /** Usual tolerance between end points of one contour, in mm [common practice, no source]. */
    public static final double USUAL_TOLERANCE_MM = 0.01;

    /**
     * Tolerance 0.01 mm, unit as stated, the usual layer rules; hidden layers and filled areas left out; at most 2 million
     * curves.
     */
    public static final DrawingOptions USUAL = new DrawingOptions(USUAL_TOLERANCE_MM, Double.NaN, LayerRules.USUAL, false,
            false, 2_000_000);

    /** The same with all layers cut, hidden ones too. */
    public static final DrawingOptions EVERYTHING = new DrawingOptions(USUAL_TOLERANCE_MM, Double.NaN, LayerRules.ALL_CUT, true,
            false, 2_000_000);

    public DrawingOptions {
        Objects.requireNonNull(layerRules, "layerRules");
        if (!(toleranceMm > 0 && toleranceMm <= 10)) {
            throw new IllegalArgumentException("tolerance " + toleranceMm + " mm is not within 0 to 10 mm");
        }
        if (mmPerUnit <= 0 || Double.isInfinite(mmPerUnit)) {
            throw new IllegalArgumentException("a drawing unit of " + mmPerUnit + " mm is not above 0");
        }
        if (mostCurves <= 0) {
            throw new IllegalArgumentException("a limit of " + mostCurves + " curves is not above 0");
        }
    }

    public DrawingOptions withUnit(double newMmPerUnit) {
        return new DrawingOptions(toleranceMm, newMmPerUnit, layerRules, hiddenLayers, filledAreasCut, mostCurves);
    }

    public DrawingOptions withLayerRules(LayerRules rules) {
        return new DrawingOptions(toleranceMm, mmPerUnit, rules, hiddenLayers, filledAreasCut, mostCurves);
    }

    public DrawingOptions withTolerance(double mm) {
        return new DrawingOptions(mm, mmPerUnit, layerRules, hiddenLayers, filledAreasCut, mostCurves);
    }

    public DrawingOptions withHiddenLayers(boolean read) {
        return new DrawingOptions(toleranceMm, mmPerUnit, layerRules, read, filledAreasCut, mostCurves);
    }

    public DrawingOptions withFilledAreasCut(boolean cut) {
        return new DrawingOptions(toleranceMm, mmPerUnit, layerRules, hiddenLayers, cut, mostCurves);
    }
}
