// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.feature;

import java.io.ByteArrayInputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.PartCounting;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;
import punchwright.synthetic.SyntheticParts;

/** Time of counting 1000 parts: 100 generated ones, each in ten copies, turned and mirrored at random. */
final class ManyParts {

    private static final int KINDS = 100;
    private static final int COPIES = 10;

    private ManyParts() {
    }

    static void print(PrintStream out) throws DrawingException {
        Random random = new Random(1);
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < KINDS; i++) {
            byte[] dxf = SyntheticParts.part(1, i).dxf().getBytes(StandardCharsets.US_ASCII);
            Shape part = DrawingReader.read(new ByteArrayInputStream(dxf), "part", DrawingOptions.USUAL).shapes().get(0);
            for (int k = 0; k < COPIES; k++) {
                shapes.add(part.moved(new Pose(1e4 * random.nextDouble(), 1e4 * random.nextDouble(), 360 * random.nextDouble(),
                        random.nextBoolean())));
            }
        }
        long start = System.nanoTime();
        int groups = PartCounting.groups(shapes).size();
        out.printf("counting of %,d parts: %.2f s, %d different%n", shapes.size(), (System.nanoTime() - start) / 1e9, groups);
    }
}
