// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import punchwright.engine.feature.FeatureSet;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;

/** Validation: seeded parts of many kinds; the union of all hits against the drawn part, by an independent geometry library. */
class RandomPartsTest {

    static FeatureSet part(Random random) {
        double length = 150 + random.nextInt(250);
        double width = 120 + random.nextInt(150);
        Parts p = switch (random.nextInt(3)) {
            case 0 -> Parts.plate(length, width);
            case 1 -> Parts.outline(Parts.rounded(length, width, 5));
            default -> Parts.outline(notched(length, width, random));
        };
        for (double x = 45; x < length - 70; x += 70) {
            for (double y = 45; y < width - 70; y += 70) {
                opening(p, x + random.nextInt(6), y + random.nextInt(6), random);
            }
        }
        return p.build("R");
    }

    private static Contour notched(double l, double w, Random random) {
        double a = 6 + random.nextInt(8);
        double b = 6 + random.nextInt(10);
        List<Point> c = new ArrayList<>(List.of(new Point(0, 0), new Point(l, 0), new Point(l, w - a), new Point(l - b, w - a),
                new Point(l - b, w)));
        double x = 20 + random.nextInt(30);
        double n = 11 + random.nextInt(12);
        c.addAll(List.of(new Point(x + n, w), new Point(x + n, w - 9), new Point(x, w - 9), new Point(x, w), new Point(0, w)));
        return Contour.polygon(c);
    }

    private static void opening(Parts p, double x, double y, Random random) {
        double angle = random.nextInt(3) == 0 ? random.nextInt(180) : 0;
        double l = 16 + random.nextInt(20);
        double w = 8 + random.nextInt(8);
        switch (random.nextInt(6)) {
            case 0 -> p.round(x, y, 4 + random.nextInt(40));
            case 1 -> p.rectangle(x, y, angle, l, w);
            case 2 -> p.roundedRectangle(x, y, angle, l, w + 6, 4);
            case 3 -> p.roundedRectangle(x, y, angle, l, w, w / 2);
            case 4 -> p.rectangle(x, y, angle, w, w);
            default -> p.free(Contour.polygon(List.of(new Point(x - 15, y - 10), new Point(x + 10, y - 10),
                    new Point(x + 18, y + 6), new Point(x - 4, y + 17), new Point(x - 15, y + 12))));
        }
    }

    private static List<Tool> tools() {
        List<Tool> tools = new ArrayList<>(Shop.tools());
        tools.add(Shop.round(4));
        tools.add(Shop.rectangle(8, 3));
        tools.add(Shop.rectangle(12, 4));
        return tools;
    }

    @ParameterizedTest
    @ValueSource(ints = { 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 })
    void hitsRemoveTheWasteAndNothingElse(int seed) {
        FeatureSet features = part(new Random(seed));
        OperationList list = ToolChoice.choose(Shop.job(features, 2, tools()));
        CutCheck c = CutCheck.of(features.shape(), list, ToolingRules.USUAL.scallopMm());
        String text = c + " " + list.findings().stream().map(f -> f.code() + " " + f.subject() + ": " + f.message()).toList();
        assertTrue(c.deepestMm() <= 0.01, text);
        assertTrue(list.complete(), text);
        assertTrue(c.uncutMm() <= c.jointsMm() + 0.05, text);
        if (seed <= 2) {
            assertEquals(list, ToolChoice.choose(Shop.job(features, 2, tools())));
        }
    }
}
