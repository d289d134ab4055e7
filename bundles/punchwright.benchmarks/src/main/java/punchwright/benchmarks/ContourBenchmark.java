// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;

/** Point-in-contour tests on a regular polygon, the innermost step of every check of hits against parts. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ContourBenchmark {

    /** Corners of the polygon. */
    @Param({"8", "64", "512"})
    public int corners;

    private Contour contour;

    @Setup
    public void drawPolygon() {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners; i++) {
            double angle = 2 * Math.PI * i / corners;
            points.add(new Point(100 * Math.cos(angle), 100 * Math.sin(angle)));
        }
        contour = Contour.polygon(points);
    }

    @Benchmark
    public boolean containsPointNearTheEdge() {
        return contour.contains(new Point(69, 69));
    }

    @Benchmark
    public double areaMm2() {
        return contour.areaMm2();
    }
}
