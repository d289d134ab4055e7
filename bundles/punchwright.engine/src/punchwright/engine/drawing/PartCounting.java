// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/** Finds out which shapes of a drawing are one part, also turned and mirrored. */
public final class PartCounting {

    /** Greatest difference of equal parts, as for end points of one contour, in mm. */
    private static final double TOLERANCE_MM = DrawingOptions.USUAL_TOLERANCE_MM;

    private PartCounting() {
    }

    private record Open(Shape shape, ShapeMarks marks, ShapeMarks mirrored, List<PartGroup.Copy> copies) {
    }

    /** Groups in the order of their first shape; a shape that fits without mirroring is not called mirrored. */
    public static List<PartGroup> groups(List<Shape> shapes) {
        List<Open> groups = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            ShapeMarks marks = new ShapeMarks(shapes.get(i), TOLERANCE_MM);
            if (!joined(groups, marks, i)) {
                groups.add(new Open(shapes.get(i), marks, marks.mirrored(),
                        new ArrayList<>(List.of(new PartGroup.Copy(i, Pose.IDENTITY)))));
            }
        }
        return groups.stream().map(g -> new PartGroup(g.shape(), g.copies())).toList();
    }

    private static boolean joined(List<Open> groups, ShapeMarks marks, int position) {
        for (Open group : groups) {
            if (group.marks().mayEqual(marks)) {
                Pose same = group.marks().motionTo(marks);
                Pose other = same != null ? null : group.mirrored().motionTo(marks);
                if (same != null || other != null) {
                    group.copies().add(new PartGroup.Copy(position, same != null ? same
                            : new Pose(other.x(), other.y(), other.angleDeg(), true)));
                    return true;
                }
            }
        }
        return false;
    }
}
