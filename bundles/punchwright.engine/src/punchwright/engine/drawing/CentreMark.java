// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import punchwright.engine.geometry.Point;

/**
 * A POINT of the drawing: where something is to be centred.
 *
 * @param place   in mm
 * @param layer   name of its layer
 * @param meaning what the layer rules say of the layer
 */
public record CentreMark(Point place, String layer, LayerMeaning meaning) {
}
