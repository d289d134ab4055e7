// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import punchwright.engine.geometry.Point;

/** A kind with its place and sizes, as in {@link Feature}. */
record Match(FeatureKind kind, Point center, double angleDeg, double lengthMm, double widthMm, double cornerRadiusMm) {
}
