// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.engine.holding.ClampArrangement;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;
import punchwright.engine.tooling.ToolUse;

/**
 * All that the proof may know: hits, tool shapes, clamps, machine, and the drawing placed on the sheet.
 *
 * @param parts      part shapes in sheet coordinates
 * @param joints     middles of intended micro-joints in sheet coordinates
 * @param jointMm    their width
 * @param hits       in the order of the run
 * @param holdings   clamps of each holding, by index
 * @param toleranceMm largest deviation of the made edge from the drawn edge (scallops included)
 * @param uses       where each tool stands; empty when only the machine's own limits are to be held
 * @param forms      forms that the drawing asks for
 * @param parks      sheet places moved under the tool axis before the reposition after a holding, by its index from 0; where none
 *                   is given the sheet stays where the last hit left it
 */
public record ProofJob(Machine machine, Material material, double thicknessMm, double sheetLengthMm, double sheetWidthMm,
        List<Shape> parts, List<Point> joints, double jointMm, List<ProofHit> hits, List<ClampArrangement> holdings,
        double toleranceMm, List<ToolUse> uses, List<ProofForm> forms, Map<Integer, Point> parks) {

    public ProofJob {
        parts = List.copyOf(parts);
        joints = List.copyOf(joints);
        hits = List.copyOf(hits);
        holdings = List.copyOf(holdings);
        uses = List.copyOf(uses);
        forms = List.copyOf(forms);
        parks = Collections.unmodifiableMap(new TreeMap<>(parks));
    }

    /** Without moves before repositions. */
    public ProofJob(Machine machine, Material material, double thicknessMm, double sheetLengthMm, double sheetWidthMm,
            List<Shape> parts, List<Point> joints, double jointMm, List<ProofHit> hits, List<ClampArrangement> holdings,
            double toleranceMm, List<ToolUse> uses, List<ProofForm> forms) {
        this(machine, material, thicknessMm, sheetLengthMm, sheetWidthMm, parts, joints, jointMm, hits, holdings, toleranceMm,
                uses, forms, Map.of());
    }

    /** Without forms. */
    public ProofJob(Machine machine, Material material, double thicknessMm, double sheetLengthMm, double sheetWidthMm,
            List<Shape> parts, List<Point> joints, double jointMm, List<ProofHit> hits, List<ClampArrangement> holdings,
            double toleranceMm, List<ToolUse> uses) {
        this(machine, material, thicknessMm, sheetLengthMm, sheetWidthMm, parts, joints, jointMm, hits, holdings, toleranceMm,
                uses, List.of());
    }

    /** Without forms and places: only the machine's own limits are held. */
    public ProofJob(Machine machine, Material material, double thicknessMm, double sheetLengthMm, double sheetWidthMm,
            List<Shape> parts, List<Point> joints, double jointMm, List<ProofHit> hits, List<ClampArrangement> holdings,
            double toleranceMm) {
        this(machine, material, thicknessMm, sheetLengthMm, sheetWidthMm, parts, joints, jointMm, hits, holdings, toleranceMm,
                List.of(), List.of());
    }
}
