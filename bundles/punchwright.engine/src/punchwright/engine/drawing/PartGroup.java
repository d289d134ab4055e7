// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.List;

import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/**
 * Equal shapes of a drawing.
 *
 * @param shape  the first of them
 * @param copies all of them, the first included, in the order of the drawing
 */
public record PartGroup(Shape shape, List<Copy> copies) {

    /**
     * One of the equal shapes.
     *
     * @param position in the list of shapes
     * @param pose     moves the group's shape to this one; mirrored where only the other face fits
     */
    public record Copy(int position, Pose pose) {
    }

    public PartGroup {
        copies = List.copyOf(copies);
    }

    public int count() {
        return copies.size();
    }

    /** Copies that need the other face. */
    public long mirrored() {
        return copies.stream().filter(c -> c.pose().mirrored()).count();
    }
}
