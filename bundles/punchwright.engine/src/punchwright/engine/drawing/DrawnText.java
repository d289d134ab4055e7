// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.List;

import punchwright.engine.geometry.Point;

/**
 * A text of the drawing (TEXT, MTEXT or ATTRIB), for marking.
 *
 * @param place    its insertion point in mm
 * @param text     without formatting codes; lines are parted by a line feed
 * @param heightMm height of its capitals, 0 where the drawing gives none
 * @param angleDeg direction of its lines, 0 to below 360
 * @param layer    name of its layer
 * @param meaning  what the layer rules say of the layer
 */
public record DrawnText(Point place, String text, double heightMm, double angleDeg, String layer, LayerMeaning meaning) {

    public List<String> lines() {
        return List.of(text.split("\n", -1));
    }
}
