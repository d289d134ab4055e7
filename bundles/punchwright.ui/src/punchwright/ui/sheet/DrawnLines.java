// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What a drawing shows beside the edges of its parts. All in mm, y upward.
 *
 * @param strokes lines by what they stand for
 * @param notes   texts
 * @param centres centre marks
 */
public record DrawnLines(List<Stroke> strokes, List<Note> notes, List<Centre> centres) {

    /** Nothing. */
    public static final DrawnLines NONE = new DrawnLines(List.of(), List.of(), List.of());

    /**
     * One line.
     *
     * @param kind   what it stands for
     * @param line   its points
     * @param closed whether the last point goes back to the first
     * @param box    its bounds
     */
    public record Stroke(LineKind kind, Outline line, boolean closed, double[] box) {

        /** A line with its box worked out. */
        public static Stroke of(LineKind kind, Outline line, boolean closed) {
            return new Stroke(kind, line, closed, line.bounds());
        }
    }

    /** A text with its lower left corner, height of capitals and direction in degrees. */
    public record Note(double x, double y, double heightMm, double angleDeg, String text) {
    }

    /** A centre mark. */
    public record Centre(double x, double y) {
    }

    /** The kinds of line that occur. */
    public Set<LineKind> kinds() {
        Set<LineKind> kinds = EnumSet.noneOf(LineKind.class);
        strokes.forEach(s -> kinds.add(s.kind()));
        return kinds;
    }
}
