// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/**
 * A text or centre mark, where it stands in drawing units.
 *
 * @param text  without formatting codes, lines parted by a line feed; empty for a point
 * @param at    insertion point
 * @param along direction of the lines of text
 * @param up    from the foot of a letter to its head: the height
 */
public record DrawnNote(Style style, boolean isPoint, String text, Vec3 at, Vec3 along, Vec3 up) {

    DrawnNote mapped(Frame frame, Style seen) {
        return new DrawnNote(seen, isPoint, text, frame.point(at), frame.vector(along), frame.vector(up));
    }

    public double x() {
        return at.x();
    }

    public double y() {
        return at.y();
    }

    public double heightUnits() {
        return up.norm();
    }

    /** Direction of the lines as seen from above, 0 to below 360. */
    public double angleDeg() {
        return punchwright.engine.geometry.Angles.normalizeDeg(Math.toDegrees(Math.atan2(along.y(), along.x())));
    }
}
