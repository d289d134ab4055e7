// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.List;

/**
 * What the drawing holds before repairs: only exact duplicates and pieces shorter than the tolerance are left out, and
 * contours out of knots where more than two lines meet are not counted as closed. An independent reader counts the same.
 *
 * @param closedLoops       simple closed contours, coincident ones once
 * @param openChains        connected groups of pieces with loose ends
 * @param circleDiametersMm loops drawn as circles or as arcs of one circle, rising
 * @param areaMm2           closed loops of even nesting depth less those of odd depth
 * @param cutLengthMm       all curves, duplicates once
 */
public record DrawnMeasure(int closedLoops, int openChains, List<Double> circleDiametersMm, double areaMm2, double cutLengthMm) {

    public DrawnMeasure {
        circleDiametersMm = List.copyOf(circleDiametersMm);
    }
}
