// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.CircleFit;
import punchwright.engine.geometry.Point;

/**
 * Finds bolt circles, grids, staggered grids and rows among openings of one kind and size. A bolt circle must divide its
 * circle evenly; with fewer than five holes its centre must be the centre of a larger round opening or of a round part,
 * since the corners of a square lie on a circle as well.
 */
final class PatternRecognition {

    private static final double SAME_SIZE_MM = 0.02;
    private static final double SAME_PLACE_MM = 0.05;
    private static final int LEAST = 3;
    private static final int SURE_CIRCLE = 5;
    private static final int MOST_ON_CIRCLE = 360;
    /** Larger groups are perforated fields; bolt circles among them are not looked for. */
    private static final int MOST_SEARCHED = 1000;
    private static final int MOST_CENTERS = 100;

    private final List<Feature> openings;
    /** Round openings and round outlines, largest first. */
    private final List<Feature> rounds;
    private final List<Pattern> found = new ArrayList<>();

    private PatternRecognition(List<Feature> features) {
        openings = features.stream().filter(Feature::isOpening).filter(f -> f.kind() != FeatureKind.FREE_OPENING).toList();
        rounds = features.stream().filter(f -> f.kind() == FeatureKind.ROUND || isDisc(f))
                .sorted(Comparator.comparingDouble(f -> -sizeOf(f))).limit(MOST_CENTERS).toList();
    }

    private static boolean isDisc(Feature f) {
        return f.kind() == FeatureKind.ARC_EDGE && f.path().get(0) instanceof Arc arc && arc.isFullCircle();
    }

    private static double sizeOf(Feature round) {
        return isDisc(round) ? 2 * round.cornerRadiusMm() : round.lengthMm();
    }

    private static Point centerOf(Feature round) {
        return isDisc(round) ? ((Arc) round.path().get(0)).center() : round.center();
    }

    static List<Pattern> of(List<Feature> features) {
        PatternRecognition recognition = new PatternRecognition(features);
        recognition.groups().forEach(recognition::search);
        return recognition.found;
    }

    /** Openings of one kind and size, in the order of their numbers. */
    private List<List<Feature>> groups() {
        Map<FeatureKind, List<Feature>> kinds = new TreeMap<>();
        openings.forEach(f -> kinds.computeIfAbsent(f.kind(), k -> new ArrayList<>()).add(f));
        List<List<Feature>> groups = new ArrayList<>();
        for (List<Feature> kind : kinds.values()) {
            for (List<Feature> length : clusters(kind, Feature::lengthMm, SAME_SIZE_MM)) {
                for (List<Feature> width : clusters(length, Feature::widthMm, SAME_SIZE_MM)) {
                    groups.addAll(clusters(width, Feature::cornerRadiusMm, 2 * SAME_SIZE_MM));
                }
            }
        }
        groups.forEach(g -> g.sort(Comparator.comparingInt(Feature::number)));
        groups.sort(Comparator.comparingInt(g -> g.get(0).number()));
        return groups.stream().filter(g -> g.size() >= LEAST).toList();
    }

    /** Sorted by a value and parted wherever it steps by more than the gap, so that no raster parts equal ones. */
    private static List<List<Feature>> clusters(List<Feature> features, ToDoubleFunction<Feature> value, double gapMm) {
        List<Feature> sorted = new ArrayList<>(features);
        sorted.sort(Comparator.comparingDouble(value).thenComparingInt(Feature::number));
        List<List<Feature>> clusters = new ArrayList<>();
        double last = Double.NEGATIVE_INFINITY;
        for (Feature f : sorted) {
            if (value.applyAsDouble(f) - last > gapMm) {
                clusters.add(new ArrayList<>());
            }
            clusters.get(clusters.size() - 1).add(f);
            last = value.applyAsDouble(f);
        }
        return clusters;
    }

    private void search(List<Feature> group) {
        List<Feature> rest = new ArrayList<>(group);
        if (group.size() <= MOST_SEARCHED) {
            double own = group.get(0).lengthMm() + SAME_SIZE_MM;
            rounds.stream().filter(r -> sizeOf(r) > own).forEach(r -> boltCircle(rest, centerOf(r)));
        }
        if (rest.size() >= SURE_CIRCLE && rest.size() <= MOST_ON_CIRCLE) {
            CircleFit fit = CircleFit.of(rest.stream().map(Feature::center).toList());
            if (fit != null && rest.stream().allMatch(f -> fit.distance(f.center()) <= SAME_PLACE_MM)) {
                boltCircle(rest, fit.center());
            }
        }
        found.addAll(new GridSearch(rest, SAME_PLACE_MM).patterns());
    }

    /** Takes the openings that divide one circle about the centre evenly. */
    private void boltCircle(List<Feature> rest, Point center) {
        List<Feature> around = rest.stream().filter(f -> f.center().distance(center) > SAME_PLACE_MM).toList();
        for (List<Feature> ring : clusters(around, f -> f.center().distance(center), SAME_PLACE_MM)) {
            if (ring.size() >= LEAST && ring.size() <= MOST_ON_CIRCLE && isEven(ring, center)) {
                ring.sort(Comparator.comparingDouble(f -> direction(f, center)));
                Feature first = ring.get(0);
                CircleFit fit = CircleFit.of(ring.stream().map(Feature::center).toList());
                found.add(new Pattern(Pattern.Kind.BOLT_CIRCLE, ring.stream().map(Feature::number).sorted().toList(),
                        fit.center(), direction(first, fit.center()), 2 * fit.radiusMm(), 0, ring.size(), 1));
                rest.removeAll(ring);
            }
        }
    }

    private static double direction(Feature f, Point center) {
        double deg = Math.toDegrees(f.center().minus(center).angleRad());
        return deg < -1e-9 ? deg + 360 : Math.max(0, deg);
    }

    private static boolean isEven(List<Feature> ring, Point center) {
        double[] directions = ring.stream().mapToDouble(f -> direction(f, center)).sorted().toArray();
        double radius = ring.get(0).center().distance(center);
        double step = 360.0 / directions.length;
        for (int i = 0; i < directions.length; i++) {
            double next = i + 1 < directions.length ? directions[i + 1] : directions[0] + 360;
            if (Math.toRadians(Math.abs(next - directions[i] - step)) * radius > 2 * SAME_PLACE_MM) {
                return false;
            }
        }
        return true;
    }
}
