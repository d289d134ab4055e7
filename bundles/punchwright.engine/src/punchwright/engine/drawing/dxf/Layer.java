// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/** A layer of the layer table. */
public record Layer(String name, int colour, String lineType, boolean off, boolean frozen) {

    public boolean hidden() {
        return off || frozen;
    }
}
