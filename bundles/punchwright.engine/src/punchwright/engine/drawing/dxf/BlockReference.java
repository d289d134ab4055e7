// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/** A block set into the drawing or into another block, once or as rows and columns. */
record BlockReference(Style style, String block, Frame plane, Vec3 at, Vec3 scale, double angleDeg, int columns, int rows,
        double columnStep, double rowStep, long place) {

    /** Copies in the array, at least 1. */
    long copies() {
        return (long) columns * rows;
    }

    /** The map from the block's coordinates to those of the holder, for one copy of the array. */
    Frame frame(int column, int row, Vec3 base) {
        Frame placed = Frame.placement(new Vec3(1, 1, 1), angleDeg, at);
        Vec3 step = placed.vector(new Vec3(column * columnStep, row * rowStep, 0));
        Frame turned = Frame.placement(scale, angleDeg, at.plus(step));
        return plane.after(turned.after(Frame.translation(base.times(-1))));
    }
}
