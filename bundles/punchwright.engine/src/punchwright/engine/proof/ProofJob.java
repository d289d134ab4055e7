// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.List;

import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.engine.holding.ClampArrangement;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;

/**
 * All that the proof may know: hits, tool shapes, clamps, machine, and the drawing placed on the sheet.
 *
 * @param parts      part shapes in sheet coordinates
 * @param joints     middles of intended micro-joints in sheet coordinates
 * @param jointMm    their width
 * @param toleranceMm largest deviation of the made edge from the drawn edge (scallops included)
 */
public record ProofJob(Machine machine, Material material, double thicknessMm, double sheetLengthMm, double sheetWidthMm,
        List<Shape> parts, List<Point> joints, double jointMm, List<ProofHit> hits, List<ClampArrangement> holdings,
        double toleranceMm) {
}
