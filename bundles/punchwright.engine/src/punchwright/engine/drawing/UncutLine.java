// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.List;

import punchwright.engine.geometry.Segment;

/**
 * An entity that is not cut: a mark, the place of a form, a bend line, a line that is ignored, hidden, or the outline of a
 * filled area.
 *
 * @param meaning  what the layer rules say; CUT for a hidden line or a filled area that would be cut else
 * @param state    whether it is seen in the drawing
 * @param filled   whether it is the outline of a filled area (SOLID, TRACE)
 * @param layer    name of its layer
 * @param segments in mm, in order, at least one
 */
public record UncutLine(LayerMeaning meaning, LayerState state, boolean filled, String layer, List<Segment> segments) {

    public UncutLine {
        segments = List.copyOf(segments);
    }

    public boolean isHidden() {
        return state != LayerState.SHOWN;
    }
}
