// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.HashMap;
import java.util.Map;

import punchwright.engine.geometry.Point;

/** The hits of one tool, to tell whether one has been made already. */
final class HitSet {

    /** Hits nearer than this at the same angle are one, mm. */
    private static final double SAME_MM = 0.005;
    private static final double CELL_MM = 0.02;

    private record Cell(long x, long y, long angle) {
    }

    private final int order;
    private final Map<Cell, Point> made = new HashMap<>();

    HitSet(Tool tool) {
        order = ToolFootprint.symmetryOrder(tool);
    }

    /** Adds the hit; false when it was there. */
    boolean add(PartHit hit) {
        long angle = Math.round(AngleFit.canonicalDeg(hit.angleDeg(), order) * 50);
        long x = Math.round(hit.at().x() / CELL_MM);
        long y = Math.round(hit.at().y() / CELL_MM);
        for (long i = -1; i <= 1; i++) {
            for (long j = -1; j <= 1; j++) {
                Point there = made.get(new Cell(x + i, y + j, angle));
                if (there != null && there.distance(hit.at()) < SAME_MM) {
                    return false;
                }
            }
        }
        made.put(new Cell(x, y, angle), hit.at());
        return true;
    }
}
