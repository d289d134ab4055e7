// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;

import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Fewer corners, judged with JTS: valid, around the polygon, nowhere farther from it than the tolerance. */
class OuterSimplifierTest {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static Polygon polygon(double[][] ring) {
        Coordinate[] c = new Coordinate[ring.length + 1];
        for (int i = 0; i <= ring.length; i++) {
            c[i] = new Coordinate(ring[i % ring.length][0], ring[i % ring.length][1]);
        }
        return FACTORY.createPolygon(c);
    }

    /** A wavy star with many corners. */
    private static double[][] star(SplittableRandom r) {
        int n = r.nextInt(30, 400);
        int waves = r.nextInt(2, 9);
        double depth = r.nextDouble(0.05, 0.6);
        double noise = r.nextDouble(0, 0.01);
        double[][] ring = new double[n][];
        for (int i = 0; i < n; i++) {
            double a = 2 * Math.PI * i / n;
            double radius = 100 * (1 + depth * Math.sin(waves * a)) * (1 + noise * r.nextDouble());
            ring[i] = new double[] {radius * Math.cos(a), radius * Math.sin(a)};
        }
        return ring;
    }

    @Test
    void growsByNoMoreThanTheTolerance() {
        SplittableRandom r = new SplittableRandom(1);
        int before = 0;
        int after = 0;
        for (int i = 0; i < 60; i++) {
            double[][] ring = star(r);
            double tolerance = r.nextDouble(0.05, 1);
            double[][] simple = OuterSimplifier.of(ring, tolerance);
            Polygon outer = polygon(simple);
            assertTrue(outer.isValid(), "case " + i);
            assertTrue(outer.buffer(1e-9).covers(polygon(ring)), "case " + i);
            double off = DiscreteHausdorffDistance.distance(outer.getExteriorRing(), polygon(ring).getExteriorRing(), 0.2);
            assertTrue(off <= 3 * tolerance, "case " + i + ": " + off + " for " + tolerance);
            before += ring.length;
            after += simple.length;
        }
        assertTrue(after < 0.6 * before, after + " of " + before + " corners");
    }

    /** A hole, clockwise, only shrinks. */
    @Test
    void holesShrink() {
        SplittableRandom r = new SplittableRandom(2);
        for (int i = 0; i < 30; i++) {
            double[][] ring = star(r);
            double[][] hole = new double[ring.length][];
            for (int k = 0; k < ring.length; k++) {
                hole[k] = ring[ring.length - 1 - k];
            }
            Polygon inner = polygon(OuterSimplifier.of(hole, 0.5));
            assertTrue(inner.isValid() && polygon(ring).buffer(1e-9).covers(inner), "case " + i);
        }
    }
}
