// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolFootprint;

/** Half the box around a punch on the sheet, mm along x and y from the tool axis, the same towards both sides. */
record Footprint(double halfXMm, double halfYMm) {

    static Footprint of(Tool tool, double angleDeg) {
        Bounds b = Bounds.EMPTY.including(Point.ORIGIN);
        for (Contour c : ToolFootprint.of(tool)) {
            b = b.including(c.moved(Pose.at(0, 0, angleDeg)).bounds());
        }
        return new Footprint(Math.max(-b.minX(), b.maxX()), Math.max(-b.minY(), b.maxY()));
    }
}
