// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import punchwright.outside.OutsideData;

/** Tours and lower bounds against published optima of TSPLIB and against closed cases. */
class TourValidationTest {

    private record Plane(double[] x, double[] y) implements TourBound.Costs {
        @Override
        public double cost(int i, int j) {
            return least(x[i] - x[j], y[i] - y[j]);
        }

        @Override
        public double least(double dx, double dy) {
            return Math.hypot(dx, dy);
        }
    }

    /** Lengths of the tour 1, 2, ..., n: pcb442 published in TSPLIB 95, the others added up from the files. */
    @ParameterizedTest
    @CsvSource({"pcb442, 221440", "berlin52, 22205", "kroA100, 191387"})
    void filesAreReadAsPublished(String name, double identity) throws IOException {
        TsplibFile f = TsplibFile.read(data(), name);
        assertEquals(identity, f.length(f.identity()));
    }

    /** Optima: TSPLIB, list of the best known solutions (Reinelt). At most 2 per cent above, and never below. */
    @ParameterizedTest
    @CsvSource({"berlin52, 7542", "eil51, 426", "st70, 675", "kroA100, 21282", "lin105, 14379", "a280, 2579", "pcb442, 50778",
        "d493, 35002", "u574, 36905", "rat783, 8806", "pr1002, 259045", "u1060, 224094"})
    void toursNearPublishedOptima(String name, double optimum) throws IOException {
        TsplibFile f = TsplibFile.read(data(), name);
        int[] tour = solve(f.x(), f.y(), f::euc2d, 20_000_000);
        assertPermutation(tour, f.x().length);
        double length = f.length(tour);
        assertTrue(length >= optimum && length <= 1.02 * optimum, name + ": " + length + " against " + optimum);
    }

    @ParameterizedTest
    @CsvSource({"berlin52, 7542", "eil51, 426", "kroA100, 21282", "a280, 2579", "pcb442, 50778", "rat783, 8806"})
    void boundsBelowPublishedOptima(String name, double optimum) throws IOException {
        TsplibFile f = TsplibFile.read(data(), name);
        double bound = TourBound.closed(new TourBound.Costs() {
            @Override
            public double cost(int i, int j) {
                return f.euc2d(i, j);
            }

            @Override
            public double least(double dx, double dy) {
                return Math.floor(Math.hypot(dx, dy) + 0.5);
            }
        }, f.x(), f.y(), 900);
        assertTrue(bound <= optimum + 1e-6 && bound >= 0.98 * optimum, name + ": " + bound + " against " + optimum);
    }

    /** A chess-board of unit squares with an even number of rows has a tour of one unit a node, and none is shorter. */
    @Test
    void unitGrid() {
        int n = 12 * 15;
        double[] x = IntStream.range(0, n).mapToDouble(i -> i % 15).toArray();
        double[] y = IntStream.range(0, n).mapToDouble(i -> i / 15).toArray();
        Plane plane = new Plane(x, y);
        assertEquals(n, length(solve(x, y, plane, 20_000_000), plane), 1e-9);
        assertEquals(n, TourBound.closed(plane, x, y, 300), 1e-6);
        assertEquals(n - 1, TourBound.path(plane, x, y, 300), 1e-6);
    }

    /** All tours of eight random points are tried. */
    @Test
    void boundsHoldAndToursAreBestOnSmallCases() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            double[] x = random.doubles(8).toArray();
            double[] y = random.doubles(8).toArray();
            Plane plane = new Plane(x, y);
            double best = best(IntStream.range(0, 8).toArray(), 1, plane);
            double bound = TourBound.closed(plane, x, y, 300);
            assertTrue(bound <= best + 1e-9 && bound > 0.8 * best, "seed " + seed + ": " + bound + " against " + best);
            assertEquals(best, length(solve(x, y, plane, 100_000), plane), 1e-9, "seed " + seed);
        }
    }

    /** The tree over all pairs against Prim's rule written out here. */
    @Test
    void leastTreeAgainstPrim() {
        for (int seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            double[] x = random.doubles(150).map(v -> Math.rint(v * 20)).toArray();
            double[] y = random.doubles(150).map(v -> Math.rint(v * 20)).toArray();
            double[] charge = random.doubles(150, -3, 3).toArray();
            Plane plane = new Plane(x, y);
            int[][] tree = LeastTree.of(plane, x, y, charge);
            double sum = 0;
            for (int i = 0; i < tree[0].length; i++) {
                sum += plane.cost(tree[0][i], tree[1][i]) + charge[tree[0][i]] + charge[tree[1][i]];
            }
            assertEquals(prim(plane, charge), sum, 1e-9);
        }
    }

    @Test
    void partnersStayNeighbours() {
        Random random = new Random(4);
        double[] x = random.doubles(200).toArray();
        double[] y = random.doubles(200).toArray();
        int[] partner = IntStream.range(0, 200).map(i -> i ^ 1).toArray();
        int[][] neighbours = new PointIndex(x, y).nearest(8, Math::hypot);
        Plane plane = new Plane(x, y);
        int[] start = StartTour.greedy(plane, neighbours, partner);
        int[] tour = Tour.improve(plane, neighbours, start, partner, 3_000_000, 1);
        assertPermutation(tour, 200);
        for (int i = 0; i < 200; i++) {
            int before = tour[(i + 199) % 200];
            int after = tour[(i + 1) % 200];
            assertTrue(before == partner[tour[i]] || after == partner[tour[i]], "node " + tour[i]);
        }
        assertTrue(length(tour, plane) < length(start, plane));
    }

    private static double prim(Plane plane, double[] charge) {
        int n = charge.length;
        double[] key = new double[n];
        boolean[] in = new boolean[n];
        Arrays.fill(key, Double.POSITIVE_INFINITY);
        key[0] = 0;
        double sum = 0;
        for (int k = 0; k < n; k++) {
            int next = -1;
            for (int i = 0; i < n; i++) {
                next = !in[i] && (next < 0 || key[i] < key[next]) ? i : next;
            }
            in[next] = true;
            sum += key[next];
            for (int i = 0; i < n; i++) {
                key[i] = in[i] ? key[i] : Math.min(key[i], plane.cost(next, i) + charge[next] + charge[i]);
            }
        }
        return sum;
    }

    private static int[] solve(double[] x, double[] y, Tour.Metric metric, long work) {
        int[][] neighbours = new PointIndex(x, y).around(8, 1, Math::hypot);
        int[] partner = new int[x.length];
        Arrays.fill(partner, -1);
        return Tour.improve(metric, neighbours, StartTour.greedy(metric, neighbours, partner), partner, work, 1);
    }

    private static double best(int[] tour, int from, Plane plane) {
        if (from == tour.length) {
            return length(tour, plane);
        }
        double best = Double.POSITIVE_INFINITY;
        for (int i = from; i < tour.length; i++) {
            swap(tour, from, i);
            best = Math.min(best, best(tour, from + 1, plane));
            swap(tour, from, i);
        }
        return best;
    }

    private static void swap(int[] a, int i, int j) {
        int t = a[i];
        a[i] = a[j];
        a[j] = t;
    }

    private static double length(int[] tour, Plane plane) {
        double sum = 0;
        for (int i = 0; i < tour.length; i++) {
            sum += plane.cost(tour[i], tour[(i + 1) % tour.length]);
        }
        return sum;
    }

    private static void assertPermutation(int[] tour, int n) {
        assertEquals(n, Arrays.stream(tour).distinct().count());
        assertEquals(n, tour.length);
    }

    private static Path data() {
        return OutsideData.folder("tsplib");
    }
}
