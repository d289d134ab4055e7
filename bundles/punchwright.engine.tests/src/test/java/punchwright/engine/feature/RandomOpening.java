// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Openings;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;

/** An opening of known kind and sizes, drawn at random: turned, begun anywhere, either way round, split, with noise. */
record RandomOpening(FeatureKind kind, double lengthMm, double widthMm, double radiusMm, Point center, double angleDeg,
        Contour drawn) {

    private static final List<FeatureKind> KINDS = List.of(FeatureKind.ROUND, FeatureKind.SQUARE, FeatureKind.RECTANGLE,
            FeatureKind.ROUNDED_RECTANGLE, FeatureKind.OBROUND, FeatureKind.SINGLE_FLAT, FeatureKind.DOUBLE_FLAT,
            FeatureKind.HEXAGON, FeatureKind.TRIANGLE, FeatureKind.KEYHOLE, FeatureKind.ARC_SLOT);

    static RandomOpening next(Random random, int i, double noiseMm) {
        FeatureKind kind = KINDS.get(i % KINDS.size());
        double width = 3 + 27 * random.nextDouble();
        double length = width * (1.2 + 3 * random.nextDouble());
        double radius = width * (0.1 + 0.3 * random.nextDouble());
        double[] size = switch (kind) {
            case ROUND, SQUARE, HEXAGON, TRIANGLE -> new double[] {width, width, 0};
            case RECTANGLE -> new double[] {length, width, 0};
            case ROUNDED_RECTANGLE -> new double[] {length, width, radius};
            case OBROUND -> new double[] {length, width, width / 2};
            case SINGLE_FLAT, DOUBLE_FLAT -> new double[] {width, width * (0.6 + 0.3 * random.nextDouble()), 0};
            case KEYHOLE -> new double[] {width * 1.8, width * 0.5, width / 2};
            default -> slotSizes(width, random);
        };
        Contour own = switch (kind) {
            case ROUND -> Openings.round(size[0]);
            case SINGLE_FLAT -> Openings.singleFlat(size[0], size[1]);
            case DOUBLE_FLAT -> Openings.doubleFlat(size[0], size[1]);
            case HEXAGON -> Openings.hexagon(size[0]);
            case TRIANGLE -> Openings.triangle(size[0]);
            case KEYHOLE -> Openings.keyhole(size[0], size[1], size[2]);
            case ARC_SLOT -> Openings.arcSlot(size[0], size[1], size[2]);
            default -> Openings.rectangle(size[0], size[1], size[2]);
        };
        Pose pose = Pose.at(200 * random.nextDouble() - 100, 200 * random.nextDouble() - 100, 360 * random.nextDouble());
        return new RandomOpening(kind, size[0], size[1], size[2], new Point(pose.x(), pose.y()), pose.angleDeg(),
                drawn(own.moved(pose), random, noiseMm));
    }

    /** Bent by 0.1 mm at least; straighter ones are obrounds within the tolerance. */
    private static double[] slotSizes(double width, Random random) {
        double path = Math.max(2, Math.sqrt(width)) + 60 * random.nextDouble();
        double radius = Math.max(width * 0.7, Math.min(path * (0.4 + random.nextDouble()), path * path / 0.8));
        return new double[] {path + width, width, radius};
    }

    private static Contour drawn(Contour exact, Random random, double noiseMm) {
        List<Point> corners = new ArrayList<>();
        List<Double> bulges = new ArrayList<>();
        double sagittaMm = random.nextInt(3) == 0 ? 0.003 + 0.006 * random.nextDouble() : 0;
        for (Segment s : exact.segments()) {
            boolean chords = s instanceof Arc && sagittaMm > 0;
            int pieces = chords ? chords((Arc) s, sagittaMm)
                    : s instanceof Arc a && Math.abs(a.sweepRad()) > 4 ? 2 + random.nextInt(2) : 1 + random.nextInt(2);
            for (int k = 0; k < pieces; k++) {
                corners.add(s.pointAt((double) k / pieces));
                bulges.add(s instanceof Arc a && !chords ? Math.tan(a.sweepRad() / pieces / 4) : 0.0);
            }
        }
        List<Point> noisy = corners.stream().map(p -> shaken(p, random, noiseMm)).toList();
        List<Segment> segments = new ArrayList<>();
        for (int i = 0; i < noisy.size(); i++) {
            Point from = noisy.get(i);
            Point to = noisy.get((i + 1) % noisy.size());
            segments.add(bulges.get(i) == 0 ? new Line(from, to) : Arc.ofBulge(from, to, bulges.get(i)));
        }
        Collections.rotate(segments, random.nextInt(segments.size()));
        Contour drawn = new Contour(segments);
        return random.nextBoolean() ? drawn : drawn.reversed();
    }

    /** Straight pieces of an arc whose middle stays this close. */
    private static int chords(Arc arc, double sagittaMm) {
        return (int) Math.ceil(Math.abs(arc.sweepRad()) / (2 * Math.acos(1 - sagittaMm / arc.radiusMm())));
    }

    private static Point shaken(Point p, Random random, double noiseMm) {
        return p.plus(Point.polar(noiseMm * random.nextDouble(), 2 * Math.PI * random.nextDouble()));
    }
}
