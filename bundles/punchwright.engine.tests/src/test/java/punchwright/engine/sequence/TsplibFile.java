// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads two-dimensional instances of TSPLIB (Reinelt, ORSA Journal on Computing 3 (1991) 376-384) where they are at hand. */
record TsplibFile(String name, double[] x, double[] y) {

    static TsplibFile read(Path folder, String name) throws IOException {
        List<double[]> points = new ArrayList<>();
        boolean coordinates = false;
        for (String line : Files.readAllLines(folder.resolve(name + ".tsp"))) {
            String text = line.trim();
            if (text.startsWith("NODE_COORD_SECTION")) {
                coordinates = true;
            } else if (coordinates && !text.isEmpty() && Character.isDigit(text.charAt(0))) {
                String[] f = text.split("\\s+");
                points.add(new double[] {Double.parseDouble(f[1]), Double.parseDouble(f[2])});
            } else if (coordinates && !text.isEmpty()) {
                break;
            }
        }
        return new TsplibFile(name, points.stream().mapToDouble(p -> p[0]).toArray(),
                points.stream().mapToDouble(p -> p[1]).toArray());
    }

    /** The distance EUC_2D of TSPLIB 95: rounded to the nearest whole number. */
    double euc2d(int i, int j) {
        return Math.floor(Math.hypot(x[i] - x[j], y[i] - y[j]) + 0.5);
    }

    double length(int[] tour) {
        double sum = 0;
        for (int i = 0; i < tour.length; i++) {
            sum += euc2d(tour[i], tour[(i + 1) % tour.length]);
        }
        return sum;
    }

    int[] identity() {
        return java.util.stream.IntStream.range(0, x.length).toArray();
    }
}
