// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.List;

import punchwright.engine.geometry.Segment;

/** The segments (mm) of an entity that is not cut: a mark, the place of a form, a bend line. */
public record UncutLine(LayerMeaning meaning, String layer, List<Segment> segments) {
}
