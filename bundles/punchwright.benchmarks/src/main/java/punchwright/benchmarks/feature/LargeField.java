// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.feature;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.FeatureRecognition;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/** Time of recognition of a plate with 10,000 round holes in a grid. */
final class LargeField {

    private static final int SIDE = 100;
    private static final double PITCH_MM = 9;

    private LargeField() {
    }

    static void print(PrintStream out) {
        List<Contour> holes = new ArrayList<>();
        for (int i = 0; i < SIDE * SIDE; i++) {
            holes.add(Contour.circle(new Point(PITCH_MM * (1 + i % SIDE), PITCH_MM * (1 + i / SIDE)), 5));
        }
        Shape shape = new Shape(Contour.rectangle(0, 0, PITCH_MM * (SIDE + 1), PITCH_MM * (SIDE + 1)), holes);
        double first = 0;
        double best = Double.POSITIVE_INFINITY;
        FeatureSet set = null;
        for (int i = 0; i < 5; i++) {
            long start = System.nanoTime();
            set = FeatureRecognition.recognise("field", shape);
            double s = (System.nanoTime() - start) / 1e9;
            first = i == 0 ? s : first;
            best = Math.min(best, s);
        }
        out.printf("grid of %,d round holes: first %.2f s, best of five %.2f s, patterns %s%n", holes.size(), first, best,
                set.patterns().stream().map(p -> p.kind() + " " + p.columns() + " x " + p.rows()).toList());
    }
}
