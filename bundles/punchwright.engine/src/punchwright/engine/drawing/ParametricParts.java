// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Openings;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/**
 * Parts that are never drawn, from their sizes in mm. Each method refuses sizes out of range or that do not fit together,
 * with a finding that names the parameter, its value and the way out. {@code part} is the name used there.
 */
public final class ParametricParts {

    private ParametricParts() {
    }

    /** A rectangular plate; the origin is its lower left corner. Corner radius 0 for sharp corners. */
    public static Shape plate(String part, double lengthMm, double widthMm, double cornerRadiusMm, List<Hole> holes)
            throws DrawingException {
        ParameterCheck check = new ParameterCheck(part).size("the length", lengthMm).size("the width", widthMm)
                .within("the corner radius", cornerRadiusMm, 0, Math.min(lengthMm, widthMm) / 2, "mm");
        return withHoles(check, placed(lengthMm, widthMm, cornerRadiusMm), holes);
    }

    private static Contour placed(double lengthMm, double widthMm, double cornerRadiusMm) {
        return Openings.rectangle(lengthMm, widthMm, cornerRadiusMm).moved(Pose.at(lengthMm / 2, widthMm / 2, 0));
    }

    private static Shape withHoles(ParameterCheck check, Contour outline, List<Hole> holes) throws DrawingException {
        check.within("the number of holes", holes.size(), 0, ParameterCheck.MOST_HOLES, "");
        List<Contour> contours = new ArrayList<>();
        for (Hole hole : holes) {
            contours.add(check.contour(hole, contours.size() + 1));
        }
        check.holesFit(outline, contours);
        return new Shape(outline, contours);
    }

    /**
     * A round disc about the origin with a bore and a bolt circle.
     *
     * @param boreMm       0 for none
     * @param boltCircleMm diameter through the centres of the bolt holes; not used without bolts
     * @param bolts        number of bolt holes, evenly spread, 0 to 360
     * @param firstBoltDeg angle of the first, counter-clockwise from x
     */
    public static Shape flange(String part, double outerMm, double boreMm, double boltCircleMm, int bolts, double boltHoleMm,
            double firstBoltDeg) throws DrawingException {
        ParameterCheck check = new ParameterCheck(part).size("the outer diameter", outerMm)
                .within("the bore", boreMm, 0, outerMm, "mm").within("the number of bolt holes", bolts, 0, 360, "");
        List<Hole> holes = new ArrayList<>();
        if (boreMm > 0) {
            holes.add(Hole.round(0, 0, boreMm));
        }
        if (bolts > 0) {
            check.size("the bolt hole", boltHoleMm).within("the bolt circle", boltCircleMm, 0.01, outerMm, "mm");
        }
        for (int i = 0; i < bolts; i++) {
            Point at = Point.polar(boltCircleMm / 2, Math.toRadians(firstBoltDeg + 360.0 * i / bolts));
            holes.add(Hole.round(at.x(), at.y(), boltHoleMm));
        }
        return withHoles(check, Contour.circle(Point.ORIGIN, outerMm), holes);
    }

    /**
     * A rectangular panel with a perforated field in its middle: as many holes as fit between the margins.
     *
     * @param hole    form and size; its centre is not used
     * @param pitchMm between holes in a row; must leave metal between them
     * @param marginX least width without holes left and right, 0 or more
     * @param marginY the same below and above
     */
    public static Shape perforatedPanel(String part, double lengthMm, double widthMm, Hole hole, double pitchMm,
            HoleArrangement arrangement, double marginX, double marginY) throws DrawingException {
        ParameterCheck check = new ParameterCheck(part).size("the length", lengthMm).size("the width", widthMm)
                .size("the pitch", pitchMm).within("the margin in x", marginX, 0, lengthMm / 2, "mm")
                .within("the margin in y", marginY, 0, widthMm / 2, "mm");
        Contour one = check.contour(hole.at(Point.ORIGIN), 1);
        int columns = count(lengthMm - 2 * marginX - one.bounds().width() - arrangement.shift * pitchMm, pitchMm);
        int rows = count(widthMm - 2 * marginY - one.bounds().height(), arrangement.rowStep * pitchMm);
        if (one.bounds().width() >= pitchMm) {
            throw check.clash("The pitch of " + pitchMm + " mm leaves no metal between holes " + one.bounds().width()
                    + " mm wide", "Make the pitch larger or the hole smaller");
        }
        if (columns < 1 || rows < 1) {
            throw check.clash("No hole of " + hole.lengthMm() + " mm fits between the margins",
                    "Make the margins or the hole smaller");
        }
        check.within("the number of holes", (double) columns * rows, 1, ParameterCheck.MOST_HOLES, "");
        return withHoles(check, placed(lengthMm, widthMm, 0),
                field(lengthMm, widthMm, hole, pitchMm, arrangement, columns, rows));
    }

    private static int count(double room, double step) {
        return room < -1e-9 ? 0 : (int) Math.min(Integer.MAX_VALUE, Math.floor(room / step + 1e-9) + 1);
    }

    private static List<Hole> field(double length, double width, Hole hole, double pitch, HoleArrangement how,
            int columns, int rows) {
        double rowStep = how.rowStep * pitch;
        double shift = rows > 1 ? how.shift * pitch : 0;
        double x0 = (length - (columns - 1) * pitch - shift) / 2;
        double y0 = (width - (rows - 1) * rowStep) / 2;
        List<Hole> holes = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                holes.add(hole.at(new Point(x0 + column * pitch + row % 2 * shift, y0 + row * rowStep)));
            }
        }
        return holes;
    }

    /**
     * A rectangular blank with notched corners for bending; the origin is the lower left corner of the uncut blank.
     *
     * @param notchX  length of each notch along x, 0 to below half the length (with notchY 0: none)
     * @param notchY  length of each notch along y, 0 to below half the width
     * @param corners number of notched corners, counter-clockwise from the lower left, 0 to 4
     */
    public static Shape notchedBracket(String part, double lengthMm, double widthMm, double notchX, double notchY, int corners,
            List<Hole> holes) throws DrawingException {
        ParameterCheck check = new ParameterCheck(part).size("the length", lengthMm).size("the width", widthMm)
                .within("the notch along x", notchX, 0, lengthMm / 2 - 0.01, "mm")
                .within("the notch along y", notchY, 0, widthMm / 2 - 0.01, "mm")
                .within("the notched corners", corners, 0, 4, "");
        List<Point> outline = new ArrayList<>();
        Point[] corner = {new Point(0, 0), new Point(lengthMm, 0), new Point(lengthMm, widthMm), new Point(0, widthMm)};
        for (int i = 0; i < 4; i++) {
            addCorner(outline, corner[i], i, i < corners ? notchX : 0, i < corners ? notchY : 0);
        }
        return withHoles(check, Contour.polygon(outline), holes);
    }

    private static void addCorner(List<Point> outline, Point at, int i, double notchX, double notchY) {
        if (notchX == 0 || notchY == 0) {
            outline.add(at);
            return;
        }
        double inX = i == 0 || i == 3 ? notchX : -notchX;
        double inY = i < 2 ? notchY : -notchY;
        Point alongX = new Point(at.x() + inX, at.y());
        Point alongY = new Point(at.x(), at.y() + inY);
        Point inner = new Point(at.x() + inX, at.y() + inY);
        outline.addAll(i % 2 == 0 ? List.of(alongY, inner, alongX) : List.of(alongX, inner, alongY));
    }

    /**
     * A front panel for a 482.6 mm (19 inch) rack, {@code units} high, with its mounting slots; the origin is the lower left
     * corner. Sizes of IEC 60297 and EIA-310 [from memory]: width 482.6, one unit 44.45, panel 0.8 lower than its units,
     * slots 10.3 x 6.8 at 465.1 apart, 6.35 from the border of the unit.
     *
     * @param units 1 to 12
     * @param holes further openings
     */
    public static Shape rackPanel(String part, int units, List<Hole> holes) throws DrawingException {
        ParameterCheck check = new ParameterCheck(part).within("the height in rack units", units, 1, 12, "U");
        double height = units * 44.45 - 0.8;
        double edge = 6.35 - 0.4;
        List<Hole> all = new ArrayList<>();
        for (double x : new double[] {(482.6 - 465.1) / 2, (482.6 + 465.1) / 2}) {
            all.add(Hole.obround(x, edge, 0, 10.3, 6.8));
            all.add(Hole.obround(x, height - edge, 0, 10.3, 6.8));
        }
        all.addAll(holes);
        return withHoles(check, placed(482.6, height, 0), all);
    }

    /** A conductor bar cut to length; the origin is its lower left corner. */
    public static Shape busbar(String part, double lengthMm, double widthMm, List<Hole> holes) throws DrawingException {
        ParameterCheck check = new ParameterCheck(part).size("the length", lengthMm).size("the width", widthMm)
                .within("the width", widthMm, 0.01, lengthMm, "mm");
        return withHoles(check, placed(lengthMm, widthMm, 0), holes);
    }
}
