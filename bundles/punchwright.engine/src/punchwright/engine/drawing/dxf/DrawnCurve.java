// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.List;

/**
 * The curves of one entity in their order.
 *
 * @param style  layer, colour, line type
 * @param curves one for a line, arc, circle, ellipse, spline; one an edge for a polyline; none for a
 *               line without length
 * @param closed whether the entity says that it is closed
 * @param place  line of the entity in the file
 * @param filled whether it is the outline of a filled area (SOLID, TRACE)
 * @param exact  whether it is drawn as lines and circular arcs, not as ellipse or spline
 */
public record DrawnCurve(Style style, List<RawCurve> curves, boolean closed, long place, boolean exact, boolean filled) {
}
