// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

/**
 * How much of a drawing lies on one layer in one look.
 *
 * @param layer    its name
 * @param colour   colour number as seen, 1 to 255
 * @param lineType line type as seen, in upper case
 * @param hidden   whether it is off, frozen or invisible
 * @param curves   number of curves after unfolding blocks, 1 or more
 * @param meaning  what the layer rules make of it
 */
public record LayerUse(String layer, int colour, String lineType, boolean hidden, int curves, LayerMeaning meaning) {
}
