// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.List;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.InsideTest;
import punchwright.engine.geometry.Point;

/** Checks the sizes of a part that is given by parameters. */
final class ParameterCheck {

    /** Greatest size of a part, in mm: no sheet is longer [common practice, no source]. */
    static final double MOST_MM = 20_000;
    static final int MOST_HOLES = 500_000;

    private final String subject;

    ParameterCheck(String subject) {
        this.subject = subject;
    }

    /** Refuses a value that is not within the range; so does NaN. */
    ParameterCheck within(String name, double value, double least, double most, String unit) throws DrawingException {
        if (!(value >= least && value <= most)) {
            throw new DrawingException(Finding.of(DrawingReason.PARAMETER_RANGE, subject, name, value, least, most, unit));
        }
        return this;
    }

    ParameterCheck size(String name, double mm) throws DrawingException {
        return within(name, mm, 0.01, MOST_MM, "mm");
    }

    DrawingException clash(String what, String wayOut) {
        return new DrawingException(Finding.of(DrawingReason.PARAMETER_CLASH, subject, what, wayOut));
    }

    /** Contour of a hole with possible sizes. */
    Contour contour(Hole hole, int number) throws DrawingException {
        Contour contour = hole.contour();
        if (contour == null) {
            throw clash("Hole " + number + " (" + hole.form() + " " + hole.lengthMm() + " x " + hole.widthMm() + " mm, radius "
                    + hole.cornerRadiusMm() + " mm) has sizes that do not fit together",
                    "Change its length, width or radius so that each is above 0 and the width is below the length");
        }
        return contour;
    }

    /** All holes inside the outline and none over another. */
    void holesFit(Contour outline, List<Contour> holes) throws DrawingException {
        InsideTest inside = new InsideTest(outline, 0.001);
        BoxIndex index = new BoxIndex(holes.stream().map(Contour::bounds).toList());
        for (int i = 0; i < holes.size(); i++) {
            List<Point> points = Flattening.points(holes.get(i), 0.01);
            if (!points.stream().allMatch(inside::contains)) {
                throw clash("Hole " + (i + 1) + " at " + place(holes.get(i)) + " mm reaches over the outline",
                        "Move it inside or make it smaller");
            }
            int over = firstOver(i, points, holes, index);
            if (over >= 0) {
                throw clash("Holes " + (over + 1) + " and " + (i + 1) + " at " + place(holes.get(i)) + " mm lie over each other",
                        "Move one of them or make it smaller");
            }
        }
    }

    private static int firstOver(int i, List<Point> points, List<Contour> holes, BoxIndex index) {
        int[] found = {-1};
        index.query(holes.get(i).bounds(), j -> {
            if (j != i && found[0] < 0) {
                InsideTest other = new InsideTest(holes.get(j), 0.001);
                found[0] = points.stream().anyMatch(other::contains) ? j : -1;
            }
        });
        return found[0];
    }

    private static String place(Contour hole) {
        Point c = hole.bounds().center();
        return String.format(java.util.Locale.ROOT, "(%.2f, %.2f)", c.x(), c.y());
    }
}
