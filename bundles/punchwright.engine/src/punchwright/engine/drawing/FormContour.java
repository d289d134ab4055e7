// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.List;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Segment;

/**
 * The place of a form as a drawing shows it.
 *
 * @param meaning FORM_UP or FORM_DOWN
 * @param layer   name of its layer
 * @param path    its outline in mm, in order
 * @param closed  whether the outline closes
 */
public record FormContour(LayerMeaning meaning, String layer, List<Segment> path, boolean closed) {

    public FormContour {
        path = List.copyOf(path);
    }

    public Bounds bounds() {
        Bounds b = Bounds.EMPTY;
        for (Segment s : path) {
            b = b.including(s.bounds());
        }
        return b;
    }
}
