// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.List;

/**
 * What a sheet picture shows: one layout, one part alone, or a drawing. All in mm, y upward.
 *
 * @param lengthMm  sheet along x; 0 when a part is shown without a sheet
 * @param widthMm   sheet along y
 * @param parts     pieces on the sheet
 * @param groups    hits by tool in the order of the balloon numbers
 * @param holdings  clamp arrangements in order
 * @param joints    micro-joints
 * @param marks     places of findings
 * @param lines     what a drawing shows beside the edges of parts
 */
public record Scene(double lengthMm, double widthMm, List<Piece> parts, List<HitGroup> groups, List<Hold> holdings,
        List<Joint> joints, List<Mark> marks, DrawnLines lines) {

    /** Nothing to show. */
    public static final Scene EMPTY = new Scene(0, 0, List.of(), List.of(), List.of(), List.of(), List.of());

    /** A sheet with what is made on it. */
    public Scene(double lengthMm, double widthMm, List<Piece> parts, List<HitGroup> groups, List<Hold> holdings,
            List<Joint> joints, List<Mark> marks) {
        this(lengthMm, widthMm, parts, groups, holdings, joints, marks, DrawnLines.NONE);
    }

    /** A drawing. */
    public static Scene ofDrawing(List<Piece> parts, List<Mark> marks, DrawnLines lines) {
        return new Scene(0, 0, parts, List.of(), List.of(), List.of(), marks, lines);
    }

    /**
     * One piece of a part.
     *
     * @param number   number on the sheet
     * @param label    name of the part
     * @param contours outer contour first, then the openings
     * @param box      bounds of the outer contour
     * @param labelX   where the middle of the label stands
     * @param labelY   the same
     */
    public record Piece(int number, String label, List<Outline> contours, double[] box, double labelX, double labelY) {

        /** A piece with its label in the middle of its box. */
        public static Piece of(int number, String label, List<Outline> contours) {
            double[] box = contours.isEmpty() ? new double[4] : contours.get(0).bounds();
            return new Piece(number, label, contours, box, (box[0] + box[2]) / 2, (box[1] + box[3]) / 2);
        }

        /** A piece with its label at a place. */
        public static Piece labelled(int number, String label, List<Outline> contours, double x, double y) {
            return new Piece(number, label, contours, contours.isEmpty() ? new double[4] : contours.get(0).bounds(), x, y);
        }
    }

    /**
     * One clamp arrangement.
     *
     * @param index      from 0
     * @param clamps     clamps as boxes: least x, least y, largest x, largest y
     * @param deadZoneMm strip round a clamp in which nothing is hit
     * @param reachMinX  lowest x that can be hit
     * @param reachMaxX  highest x that can be hit
     * @param turned     clamped at the other edge
     */
    public record Hold(int index, List<double[]> clamps, double deadZoneMm, double reachMinX, double reachMaxX, boolean turned) {
    }

    /** A short uncut piece of an edge. */
    public record Joint(double x, double y, double widthMm) {
    }

    /** The place of a finding: rank 0 error, 1 warning, 2 note; number as in the table beside the picture, 0 for none. */
    public record Mark(double x, double y, int rank, int number) {

        /** A place without a number. */
        public Mark(double x, double y, int rank) {
            this(x, y, rank, 0);
        }
    }

    /** Number of all hits. */
    public int hitCount() {
        return groups.stream().mapToInt(HitGroup::size).sum();
    }

    /** What the picture spans: the sheet with its clamps, or the parts and lines of a drawing. */
    public double[] box() {
        double far = Double.MAX_VALUE;
        double[] box = lengthMm > 0 ? new double[] { 0, 0, lengthMm, widthMm } : new double[] { far, far, -far, -far };
        for (Piece piece : parts) {
            grow(box, piece.box());
        }
        for (Hold hold : holdings) {
            hold.clamps().forEach(clamp -> grow(box, clamp));
        }
        lines.strokes().forEach(s -> grow(box, s.box()));
        return box[0] <= box[2] ? box : new double[4];
    }

    private static void grow(double[] box, double[] by) {
        box[0] = Math.min(box[0], by[0]);
        box[1] = Math.min(box[1], by[1]);
        box[2] = Math.max(box[2], by[2]);
        box[3] = Math.max(box[3], by[3]);
    }
}
