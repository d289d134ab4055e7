// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import punchwright.engine.feature.Feature;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;

/**
 * Hits of a cluster tool over openings that lie as its punches do: from one corner on, each opening not yet covered is taken as
 * the place of the cluster's first punch, and the hit counts when every punch meets an opening not yet covered. On a regular
 * grid this tiles all of it but a rest; the rest is made by single hits.
 */
final class ClusterFinder {

    private static final double CELL_MM = 0.5;

    private final double toleranceMm;
    private final ExactHit exact;
    private final WaysMemory memory;

    ClusterFinder(ToolingRules rules, WaysMemory memory) {
        this.memory = memory;
        toleranceMm = rules.sizeToleranceMm() / 2 + 1e-6;
        exact = new ExactHit(rules);
    }

    /**
     * @param covered features in order of the hits
     */
    record Found(UsableTool tool, List<PartHit> hits, List<Feature> covered) {
    }

    private record Cell(long x, long y) {
    }

    /** The best over all angles the tool can be set to; no hits when the openings do not fit. */
    Found find(UsableTool tool, List<Feature> openings) {
        Found best = new Found(tool, List.of(), List.of());
        for (double angle : angles(tool, openings)) {
            Found found = at(tool, angle, openings);
            if (found.hits().size() > best.hits().size()) {
                best = found;
            }
        }
        return best;
    }

    private static Set<Double> angles(UsableTool tool, List<Feature> openings) {
        Set<Double> angles = new LinkedHashSet<>();
        for (int quarter = 0; quarter < 4; quarter++) {
            AngleFit.angleDeg(tool.tool(), tool.turning(), tool.tool().fixedAngleDeg() + 90 * quarter).ifPresent(angles::add);
        }
        for (double own : new TreeSet<>(openings.stream().map(Feature::angleDeg).toList())) {
            AngleFit.angleDeg(tool.tool(), tool.turning(), own).ifPresent(angles::add);
        }
        return angles;
    }

    private Found at(UsableTool tool, double angleDeg, List<Feature> openings) {
        Tool single = single(tool.tool(), angleDeg);
        Map<String, Boolean> fits = new HashMap<>();
        List<Feature> fitting = openings.stream()
                .filter(f -> fits.computeIfAbsent(memory.key(f), k -> exact.find(f, single, false).isPresent()))
                .sorted(Comparator.comparingDouble((Feature f) -> Math.rint(f.center().y() / CELL_MM))
                        .thenComparingDouble(f -> f.center().x())).toList();
        List<Point> punches = punches(tool.tool(), angleDeg);
        Map<Cell, Feature> free = new HashMap<>();
        fitting.forEach(f -> free.put(cell(f.center()), f));
        List<PartHit> hits = new ArrayList<>();
        List<Feature> covered = new ArrayList<>();
        for (Feature first : fitting) {
            Point axis = first.center().minus(punches.getFirst());
            List<Feature> met = met(axis, punches, free);
            if (met.size() == punches.size()) {
                hits.add(new PartHit(axis, angleDeg, HitRole.PIERCE));
                covered.addAll(met);
                met.forEach(f -> free.remove(cell(f.center())));
            }
        }
        return new Found(tool, hits, covered);
    }

    private List<Feature> met(Point axis, List<Point> punches, Map<Cell, Feature> free) {
        List<Feature> met = new ArrayList<>();
        for (Point punch : punches) {
            Feature f = near(axis.plus(punch), free);
            if (f == null) {
                return met;
            }
            met.add(f);
        }
        return met;
    }

    private Feature near(Point p, Map<Cell, Feature> free) {
        Cell c = cell(p);
        for (long i = -1; i <= 1; i++) {
            for (long j = -1; j <= 1; j++) {
                Feature f = free.get(new Cell(c.x() + i, c.y() + j));
                if (f != null && f.center().distance(p) <= toleranceMm) {
                    return f;
                }
            }
        }
        return null;
    }

    private static Cell cell(Point p) {
        return new Cell(Math.round(p.x() / CELL_MM), Math.round(p.y() / CELL_MM));
    }

    /** Punch centres at the angle, in the same order as the openings are walked. */
    private static List<Point> punches(Tool tool, double angleDeg) {
        Pose turn = Pose.at(0, 0, angleDeg);
        return tool.cluster().stream().map(turn::apply)
                .sorted(Comparator.comparingDouble((Point p) -> Math.rint(p.y() / CELL_MM)).thenComparingDouble(Point::x))
                        .toList();
    }

    /** One punch of the cluster as a tool of its own, set to the cluster's angle. */
    private static Tool single(Tool t, double angleDeg) {
        boolean round = Math.abs(t.lengthMm() - t.widthMm()) < 1e-9;
        return new Tool(t.id(), t.name(), round ? ToolShape.ROUND : ToolShape.RECTANGLE, t.lengthMm(), t.widthMm(),
                t.cornerRadiusMm(), AngleFreedom.FIXED, angleDeg, t.clearancesTotalMm(), t.shear(), t.shearHeightMm(), t.price(),
                t.grindsLeft(), t.grindCost(), t.hitsPerGrind(), t.hitsSinceGrind(), t.onHand(), 0, List.of(), null);
    }
}
