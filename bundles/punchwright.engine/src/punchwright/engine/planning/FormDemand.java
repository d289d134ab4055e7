// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import punchwright.engine.geometry.Point;
import punchwright.engine.tooling.ToolShape;

/**
 * A form that a part asks for beside its flat shape.
 *
 * @param shape     kind of form
 * @param at        centre in part coordinates, mm
 * @param angleDeg  direction of its length
 * @param lengthMm  size along the direction, or diameter
 * @param widthMm   size across
 */
public record FormDemand(ToolShape shape, Point at, double angleDeg, double lengthMm, double widthMm) {
}
