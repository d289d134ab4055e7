// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/**
 * How an entity is drawn.
 *
 * @param layer    name of its layer
 * @param colour   colour number 1 to 255; 256 by layer, 0 by block
 * @param lineType name in upper case; BYLAYER, BYBLOCK
 * @param hidden   whether the entity itself is set invisible
 */
public record Style(String layer, int colour, String lineType, boolean hidden) {

    public static final int BY_LAYER = 256;
    public static final int BY_BLOCK = 0;

    /** As seen when the block that holds it is inserted with another style. */
    Style inside(Style insert) {
        String ownLayer = layer.equals("0") ? insert.layer : layer;
        int ownColour = colour == BY_BLOCK ? insert.colour : colour;
        String ownType = lineType.equals("BYBLOCK") ? insert.lineType : lineType;
        boolean gone = hidden || insert.hidden;
        return ownLayer.equals(layer) && ownColour == colour && ownType.equals(lineType) && gone == hidden ? this
                : new Style(ownLayer, ownColour, ownType, gone);
    }
}
