// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Point;

/** Counts equal steps: one that lies within the tolerance of the mean of others joins them. */
final class StepCounter {

    private static final int LEAST = 2;

    private final double toleranceMm;
    private final Map<Long, List<Cluster>> raster = new LinkedHashMap<>();
    private final List<Cluster> clusters = new ArrayList<>();

    StepCounter(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    private static final class Cluster {
        private Point sum = Point.ORIGIN;
        private int count;

        Point mean() {
            return sum.times(1.0 / count);
        }
    }

    void add(Point step) {
        Cluster near = nearest(step);
        if (near == null) {
            near = new Cluster();
            clusters.add(near);
            raster.computeIfAbsent(key(cell(step.x()), cell(step.y())), k -> new ArrayList<>()).add(near);
        }
        near.sum = near.sum.plus(step);
        near.count++;
    }

    private Cluster nearest(Point step) {
        Cluster best = null;
        double least = toleranceMm;
        for (long i = cell(step.x()) - 1; i <= cell(step.x()) + 1; i++) {
            for (long j = cell(step.y()) - 1; j <= cell(step.y()) + 1; j++) {
                for (Cluster c : raster.getOrDefault(key(i, j), List.of())) {
                    double d = c.mean().distance(step);
                    if (d <= least) {
                        least = d;
                        best = c;
                    }
                }
            }
        }
        return best;
    }

    private long cell(double mm) {
        return Math.round(mm / (2 * toleranceMm));
    }

    private static long key(long i, long j) {
        return i << 32 ^ j & 0xFFFFFFFFL;
    }

    /** Means of the clusters with the most steps, those met first before others of the same count. */
    List<Point> commonest(int most) {
        return clusters.stream().filter(c -> c.count >= LEAST).sorted((a, b) -> b.count - a.count).limit(most)
                .map(Cluster::mean).toList();
    }
}
