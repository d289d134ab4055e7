// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import punchwright.engine.nesting.boxes.Work;

/**
 * Validation: regular patterns against the densest known. Regular polygons: G. Kuperberg and W. Kuperberg, Double-lattice
 * packings of convex bodies in the plane, Discrete and Computational Geometry 5 (1990) 389-397 (pentagon (5 - sqrt 5) / 3);
 * octagon (4 + 4 sqrt 2) / (5 + 4 sqrt 2); disc pi / sqrt 12 (Thue). Two equal triangles make a parallelogram, two equal
 * quadrangles a hexagon that tiles, and an L tiles by shifts alone: 1.
 */
class LatticeTest {

    private static final double SIZE = 4000;

    private static double[][] regular(int corners, double turnedDeg) {
        double[][] p = new double[corners][];
        for (int i = 0; i < corners; i++) {
            double a = Math.toRadians(turnedDeg) + 2 * Math.PI * i / corners;
            p[i] = new double[] {50 * Math.cos(a), 50 * Math.sin(a)};
        }
        return p;
    }

    /** No pattern found is denser than the densest, none more than the stated share below it. */
    @ParameterizedTest
    @CsvSource({"5, 7, 0.921311, 0.003", "5, 90, 0.921311, 0.01", "6, 7, 1, 0.0005", "7, 11, 0.892690, 0.003",
        "8, 22.5, 0.906163, 0.0005", "8, 5, 0.906163, 0.001", "96, 0, 0.907220, 0.001"})
    void regularPolygons(int corners, double turnedDeg, double densest, double below) {
        judge(regular(corners, turnedDeg), densest, below);
    }

    @Test
    void pairsThatTile() {
        judge(new double[][] {{0, 0}, {100, 13}, {37, 71}}, 1, 0.0005);
        judge(new double[][] {{0, 0}, {100, 13}, {77, 71}, {9, 50}}, 1, 0.002);
        judge(new double[][] {{0, 0}, {100, 0}, {100, 30}, {30, 30}, {30, 80}, {0, 80}}, 1, 0.0005);
    }

    /** On a large sheet the pattern's density is reached but for a strip as wide as a piece along the edges. */
    private static void judge(double[][] ring, double densest, double below) {
        Piece piece = new Piece(List.<double[][]>of(ring), List.of(0.0, 180.0), 1e-6);
        Lattice lattice = new Lattice(piece, 1e-4, new Work(2_000_000));
        double found = lattice.density();
        assertTrue(found <= densest + 1e-4 && found >= densest - below, found + " against " + densest);
        int pieces = lattice.fill(SIZE, SIZE, Integer.MAX_VALUE).size();
        double inner = SIZE - 1.5 * piece.diameter;
        assertTrue(pieces * piece.area >= (densest - below) * inner * inner, pieces + " pieces");
        assertTrue(pieces * piece.area <= densest * (SIZE + piece.diameter) * (SIZE + piece.diameter), pieces + " pieces");
    }
}
