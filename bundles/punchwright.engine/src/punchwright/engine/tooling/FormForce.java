// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import punchwright.engine.press.FormingForce;
import punchwright.engine.press.Material;

/** Forming force of a tool from its record; sizes that the record lacks are taken as usual ones. */
final class FormForce {

    /** Hole under a countersink or collar over its outer size; marked area over the mark's box. Estimates, no source. */
    private static final double HOLE_SHARE = 0.5;
    private static final double MARK_SHARE = 0.04;

    private FormForce() {
    }

    static double forceN(Tool tool, Material m, double thicknessMm) {
        double l = tool.lengthMm();
        double w = tool.widthMm();
        double rm = m.tensileMaxMPa();
        return switch (tool.shape()) {
            case COLLAR -> FormingForce.collarN(l, HOLE_SHARE * l, thicknessMm, rm);
            case COUNTERSINK -> FormingForce.coiningN(Math.PI / 4 * l * l * (1 - HOLE_SHARE * HOLE_SHARE), rm);
            case LOUVRE -> FormingForce.lanceN(l, thicknessMm, m.shearMPa());
            case LANCE -> FormingForce.lanceN(l + 2 * w, thicknessMm, m.shearMPa());
            case MARKING -> FormingForce.coiningN(MARK_SHARE * l * w, rm);
            case ROLLER -> FormingForce.embossN(w, thicknessMm, rm);
            default -> FormingForce.embossN(2 * (l + w) * (l == w ? Math.PI / 4 : 1), thicknessMm, rm);
        };
    }
}
