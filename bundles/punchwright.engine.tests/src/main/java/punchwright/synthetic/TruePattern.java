// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.List;

import punchwright.engine.feature.Pattern;
import punchwright.engine.geometry.Point;

/** Equal openings as they were laid out; pitches as in {@link Pattern}. */
public record TruePattern(Pattern.Kind kind, List<Point> centers, double pitchMm, double rowPitchMm, int columns, int rows) {
}
