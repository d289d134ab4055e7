// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Shape;

/** Validation: openings whose kind and sizes are known because they were made from them. */
class OpeningsPropertyTest {

    /** More with -Dpunchwright.openings=10000. */
    private static final int COUNT = Integer.getInteger("punchwright.openings", 1100);
    private static final double SIZE_TOLERANCE_MM = 0.01;

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.0001, 0.005})
    void everyKindIsFoundWithItsSizes(double noiseMm) {
        Random random = new Random(20260101);
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < COUNT; i++) {
            RandomOpening o = RandomOpening.next(random, i, noiseMm);
            Shape plate = new Shape(Contour.rectangle(-300, -300, 600, 600), List.of(o.drawn()));
            Feature f = FeatureRecognition.recognise("test", plate).features().get(0);
            if (!fits(o, f)) {
                wrong.add(i + " " + o.kind() + " " + o.lengthMm() + " x " + o.widthMm() + " r " + o.radiusMm() + " -> "
                        + f.kind() + " "
                        + f.lengthMm() + " x " + f.widthMm() + " r " + f.cornerRadiusMm());
            }
        }
        assertEquals(List.of(), wrong.stream().limit(10).toList(), wrong.size() + " wrong");
    }

    private static boolean fits(RandomOpening o, Feature f) {
        return f.kind() == o.kind() && Math.abs(f.lengthMm() - o.lengthMm()) <= SIZE_TOLERANCE_MM
                && Math.abs(f.widthMm() - o.widthMm()) <= SIZE_TOLERANCE_MM && f.center().distance(o.center()) <= 0.05
                && sameAngle(o, f);
    }

    private static boolean sameAngle(RandomOpening o, Feature f) {
        double period = switch (o.kind()) {
            case SQUARE -> 90;
            case RECTANGLE, ROUNDED_RECTANGLE, OBROUND, DOUBLE_FLAT -> 180;
            case HEXAGON -> 60;
            case TRIANGLE -> 120;
            case ROUND -> 1e-9;
            default -> 360;
        };
        double off = Math.abs(f.angleDeg() - o.angleDeg()) % period;
        return o.kind() == FeatureKind.ROUND || Math.min(off, period - off) < 0.3;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void theFormSaysWhereTheDrawnOneLies(int seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 110; i++) {
            RandomOpening o = RandomOpening.next(random, i, 0);
            Feature f = FeatureRecognition.recognise("test", new Shape(Contour.rectangle(-300, -300, 600, 600),
                    List.of(o.drawn()))).features().get(0);
            Contour ideal = IdealContours.of(f.kind(), f.center(), f.angleDeg(), f.lengthMm(), f.widthMm(), f.cornerRadiusMm());
            assertTrue(o.drawn().segments().stream().allMatch(s -> ideal.distance(s.start()) < 2e-3), o.toString());
        }
    }
}
