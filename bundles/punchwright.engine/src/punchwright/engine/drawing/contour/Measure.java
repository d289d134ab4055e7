// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.List;

/**
 * What the drawing holds before anything is cut or dropped beyond exact duplicates and short pieces; contours out of knots
 * where more than two lines meet are not counted as closed. Other readers measure the same.
 *
 * @param closedLoops       simple closed contours, coincident ones once
 * @param openChains        connected groups of pieces with loose ends
 * @param circleDiametersMm loops drawn as circles or as arcs of one circle, rising
 * @param areaMm2           closed loops of even nesting depth less those of odd depth
 * @param cutLengthMm       all curves, duplicates once
 */
public record Measure(int closedLoops, int openChains, List<Double> circleDiametersMm, double areaMm2, double cutLengthMm) {
}
