// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Openings;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/** Validation: the open area of a field that repeats endlessly, counted hole by hole, tends to the share of the formula. */
class FieldShareTest {

    /** Rows, hole area by the engine's contours, over the area of rows x columns fields. */
    private static double counted(Contour hole, double pitch, double rowPitch) {
        List<Contour> holes = new ArrayList<>();
        for (int row = 0; row < 20; row++) {
            for (int column = 0; column < 30; column++) {
                holes.add(hole.moved(Pose.at(pitch * (column + 0.5 + row % 2 * 0.5), rowPitch * (row + 0.5), 0)));
            }
        }
        Shape field = new Shape(Contour.rectangle(-pitch, -pitch, 33 * pitch, 22 * rowPitch), holes);
        double open = field.outer().areaMm2() - field.areaMm2();
        return 100 * open / (30 * pitch * 20 * rowPitch);
    }

    @ParameterizedTest
    @CsvSource({"5,8", "3,5", "10,15", "1.5,2.6"})
    void everyArrangement(double w, double p) {
        double sin60 = Math.sin(Math.toRadians(60));
        assertEquals(counted(Contour.circle(Point.ORIGIN, w), p, p * sin60), OpenArea.roundStaggered60Percent(w, p), 1e-9);
        assertEquals(counted(Contour.circle(Point.ORIGIN, w), p, p), OpenArea.roundSquarePercent(w, p), 1e-9);
        // Diagonal: next holes p apart along the diagonal, so p sqrt 2 in a row and half of that between rows.
        assertEquals(counted(Contour.circle(Point.ORIGIN, w), p * Math.sqrt(2), p / Math.sqrt(2)),
                OpenArea.roundDiagonalPercent(w, p), 1e-9);
        assertEquals(counted(Openings.rectangle(w, w, 0), p, p), OpenArea.squareStaggeredPercent(w, p), 1e-9);
        assertEquals(counted(Openings.rectangle(w, w, 0), p, p), OpenArea.squareSquarePercent(w, p), 1e-9);
        assertEquals(counted(Openings.rectangle(3 * w, w, w / 2), 4 * w, p), OpenArea.obroundPercent(w, 3 * w, p, 4 * w), 1e-9);
        assertEquals(counted(Openings.hexagon(w), p, p * sin60), OpenArea.hexagonStaggered60Percent(w, p), 1e-9);
    }
}
