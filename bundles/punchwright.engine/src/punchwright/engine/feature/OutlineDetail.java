// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Point;

/**
 * What a few edges of the outer contour make together; a view of edge features, which keep covering the contour by
 * themselves.
 *
 * @param kind     what it is
 * @param edges    numbers of the edge features, in order
 * @param place    the missing or rounded corner, or the middle of the mouth of an edge notch
 * @param lengthMm leg of a chamfer or corner notch along its first neighbour, width of an edge notch, 0 for a corner radius
 * @param depthMm  leg along the other neighbour, depth of an edge notch, 0 for a corner radius
 * @param radiusMm radius of a corner or of the round end of an edge notch; 0 where there is none
 */
public record OutlineDetail(Kind kind, List<Integer> edges, Point place, double lengthMm, double depthMm, double radiusMm) {

    /** What the edges make. */
    public enum Kind {
        CORNER_RADIUS, CHAMFER, CORNER_NOTCH, EDGE_NOTCH
    }

    public OutlineDetail {
        edges = List.copyOf(edges);
    }
}
