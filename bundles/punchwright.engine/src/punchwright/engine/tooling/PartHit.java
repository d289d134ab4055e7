// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import punchwright.engine.geometry.Point;

/** One hit in the part's own coordinates: tool axis in mm, tool angle in degrees (0 to below 360), and what it is for. */
public record PartHit(Point at, double angleDeg, HitRole role) {
}
