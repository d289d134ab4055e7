// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;

/** Validation: plane geometry, values worked by hand, and contours measured piece by piece. */
class CutLengthTest {

    @Test
    @Validates(of = CutLength.class, formulas = { "rectangleMm", "obroundMm", "hexagonMm", "triangleMm", "roundMm",
            "cornerRadiusMm",
        "clusterMm", "contoursMm" }, source = "plane geometry by hand")
    void commonShapes() {
        assertEquals(151.416, CutLength.rectangleMm(50, 30, 5), 0.001);
        assertEquals(91.416, CutLength.obroundMm(40, 10), 0.001);
        assertEquals(58.890, CutLength.hexagonMm(17), 0.001);
        assertEquals(30, CutLength.triangleMm(10));
        assertEquals(31.4159, CutLength.roundMm(10), 1e-4);
        assertEquals(40 + 20 * Math.PI - 40, CutLength.cornerRadiusMm(20, 10), 1e-9);
        assertEquals(4 * 31.4159, CutLength.clusterMm(31.4159, 4), 1e-9);
        assertEquals(120, CutLength.contoursMm(List.of(Contour.rectangle(0, 0, 10, 20), Contour.rectangle(30, 0, 10, 20))), 1e-9);
    }

    /** A flat at the middle leaves half the circle and the diameter; two flats far apart leave the circle. */
    @Test
    @Validates(of = CutLength.class, formulas = { "singleFlatMm", "doubleFlatMm" }, source = "plane geometry by hand")
    void flatsInTheirLimits() {
        assertEquals(Math.PI * 10 + 20, CutLength.singleFlatMm(20, 10), 1e-9);
        assertEquals(Math.PI * 20, CutLength.singleFlatMm(20, 20), 1e-9);
        assertEquals(Math.PI * 20, CutLength.doubleFlatMm(20, 20), 1e-9);
        assertEquals(2 * 20 * Math.PI / 6 + 2 * 20 * Math.sqrt(3) / 2, CutLength.doubleFlatMm(20, 10), 1e-9);
    }

    /** Round 10 stepped 2: 17.7215 mm, 10 633 N at t 2, tau 300; limits half and full circle. */
    @Test
    @Validates(of = CutLength.class, formulas = { "steppedRoundMm", "steppedRectangleMm" }, source = "plane geometry by hand")
    void steppedPunchesCutLess() {
        assertEquals(17.7215, CutLength.steppedRoundMm(10, 2), 1e-4);
        assertEquals(10_633, PunchingForce.flatN(CutLength.steppedRoundMm(10, 2), 2, 300), 1);
        assertEquals(Math.PI * 5, CutLength.steppedRoundMm(10, 1e-12), 1e-6);
        assertEquals(Math.PI * 10, CutLength.steppedRoundMm(10, 10), 1e-9);
        assertEquals(101, CutLength.steppedRectangleMm(50, 5, 48));
        assertEquals(110, CutLength.rectangleMm(50, 5, 0));
    }

    /** Polygons of many corners, drawn from the definitions of the shapes and measured side by side. */
    @Test
    @Sweeps(of = CutLength.class, formulas = { "roundMm", "rectangleMm", "obroundMm", "hexagonMm", "triangleMm", "singleFlatMm",
        "doubleFlatMm", "cornerRadiusMm", "clusterMm", "contoursMm" })
    void polygonsAgree() {
        Draw.many(21, 60, d -> {
            double a = d.between(5, 80);
            double b = d.between(0.3, 0.95) * a;
            double r = d.between(0.02, 0.45) * b;
            assertEquals(polygon(a, 5000), CutLength.roundMm(a), 1e-3);
            assertEquals(polygon(a / Math.cos(Math.PI / 6), 6), CutLength.hexagonMm(a), 1e-9);
            assertEquals(polygon(2 * a / Math.sqrt(3), 3), CutLength.triangleMm(a), 1e-9);
            assertEquals(2 * (a - 2 * r) + 2 * (b - 2 * r) + polygon(2 * r, 5000), CutLength.rectangleMm(a, b, r), 1e-3);
            assertEquals(CutLength.rectangleMm(a, b, b / 2), CutLength.obroundMm(a, b), 1e-9);
            assertEquals(clipped(a, b - a / 2, 1), CutLength.singleFlatMm(a, b), 0.02);
            assertEquals(clipped(a, b / 2, 2), CutLength.doubleFlatMm(a, b), 0.02);
            assertEquals(4 * (a - 2 * r) + polygon(2 * r, 5000), CutLength.cornerRadiusMm(a, r), 1e-3);
            assertEquals(7 * CutLength.roundMm(a), CutLength.clusterMm(CutLength.roundMm(a), 7), 1e-9);
            assertEquals(CutLength.roundMm(a), CutLength.contoursMm(List.of(Contour.circle(Point.ORIGIN, a))), 1e-9);
        });
    }

    /** Pieces of the punch's edge that lie outside the hit before. */
    @Test
    @Sweeps(of = CutLength.class, formulas = { "steppedRoundMm", "steppedRectangleMm" })
    void steppedEdgesAreCounted() {
        Draw.many(22, 100, d -> {
            double size = d.between(3, 40);
            double pitch = d.between(0.05, 1.2) * size;
            assertEquals(outside(size, pitch), CutLength.steppedRoundMm(size, pitch), 0.01 * size);
            double wide = d.between(2, 20);
            double full = CutLength.rectangleMm(size, wide, 0);
            double cut = CutLength.steppedRectangleMm(size, wide, pitch);
            assertTrue(cut <= full && cut >= wide, size + " " + pitch);
            assertEquals(pitch > size ? full : full - (2 * (size - pitch) + wide), cut, 1e-9);
        });
    }

    private static double outside(double d, double p) {
        int n = 20_000;
        int count = 0;
        for (int i = 0; i < n; i++) {
            double x = p + d / 2 * Math.cos(2 * Math.PI * i / n);
            double y = d / 2 * Math.sin(2 * Math.PI * i / n);
            count += Math.hypot(x, y) >= d / 2 ? 1 : 0;
        }
        return Math.PI * d * count / n;
    }

    private static double polygon(double diameter, int corners) {
        return corners * diameter * Math.sin(Math.PI / corners);
    }

    /** A circle cut off at the height h on one or two sides. */
    private static double clipped(double d, double h, int sides) {
        int n = 40_000;
        double length = 0;
        for (int i = 0; i < n; i++) {
            double y = d / 2 * Math.sin(2 * Math.PI * (i + 0.5) / n);
            boolean kept = y <= h && (sides == 1 || y >= -h);
            length += kept ? Math.PI * d / n : 0;
        }
        return length + sides * 2 * Math.sqrt(d * d / 4 - h * h);
    }
}
