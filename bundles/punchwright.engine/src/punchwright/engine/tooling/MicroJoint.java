// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import punchwright.engine.geometry.Point;

/** A bridge left on purpose between part and skeleton: its middle on the part's contour, and its width along it in mm. */
public record MicroJoint(Point at, double widthMm) {
}
