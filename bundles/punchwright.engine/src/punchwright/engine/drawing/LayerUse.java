// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

/**
 * How much of a drawing lies on one layer in one look; hidden curves and those that are not cut count too.
 *
 * @param layer       its name
 * @param colour      colour number as seen, 1 to 255
 * @param lineType    line type as seen, in upper case
 * @param state       whether it is seen
 * @param curves      number of curves after unfolding blocks, without filled areas
 * @param meaning     what the layer rules make of it
 * @param lengthMm    length of the curves in mm, without filled areas
 * @param filledAreas number of filled areas
 */
public record LayerUse(String layer, int colour, String lineType, LayerState state, int curves, LayerMeaning meaning,
        double lengthMm, int filledAreas) {

    /** Whether it is off, frozen or invisible. */
    public boolean hidden() {
        return state != LayerState.SHOWN;
    }
}
