// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.Pattern;
import punchwright.engine.geometry.Point;

/** Fields of equal openings about the origin, turned at random, no farther from it than 50 mm. */
final class PatternMaker {

    static final double REACH_MM = 50;
    private static final double HOLE_REACH_MM = 3;
    private static final double PITCH_LEAST_MM = 7;
    private static final List<FeatureKind> KINDS = List.of(FeatureKind.ROUND, FeatureKind.SQUARE, FeatureKind.OBROUND,
            FeatureKind.HEXAGON, FeatureKind.RECTANGLE);

    private final Random random;
    private final OpeningMaker openings;
    private final List<TrueOpening> made = new ArrayList<>();
    private TruePattern pattern;

    PatternMaker(Random random, OpeningMaker openings) {
        this.random = random;
        this.openings = openings;
    }

    List<TrueOpening> openings() {
        return made;
    }

    TruePattern pattern() {
        return pattern;
    }

    PatternMaker make(Pattern.Kind kind) {
        made.clear();
        double turn = random.nextInt(4) == 0 ? 0 : openings.between(0, 360);
        if (kind == Pattern.Kind.BOLT_CIRCLE) {
            boltCircle(turn);
            return this;
        }
        int columns = kind == Pattern.Kind.ROW ? 3 + random.nextInt(5) : 2 + random.nextInt(4);
        int rows = kind == Pattern.Kind.ROW ? 1 : 2 + random.nextInt(4);
        if (kind == Pattern.Kind.STAGGERED_GRID) {
            columns = Math.max(3, columns);
        }
        double pitch = openings.between(PITCH_LEAST_MM, 11);
        double rowPitch = rows == 1 ? 0 : kind == Pattern.Kind.GRID ? openings.between(PITCH_LEAST_MM, 11) : staggered(pitch);
        double shift = kind == Pattern.Kind.STAGGERED_GRID ? pitch / 2 : 0;
        List<Point> centers = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                centers.add(new Point((column - (columns - 1) / 2.0) * pitch + row % 2 * shift,
                        (row - (rows - 1) / 2.0) * rowPitch));
            }
        }
        fill(KINDS.get(random.nextInt(KINDS.size())), kind, centers, turn, new double[] {pitch, rowPitch}, columns, rows);
        return this;
    }

    /** Rows by 60 degrees, or farther apart; by 45 degrees the field would also be a grid, turned. */
    private double staggered(double pitch) {
        return random.nextBoolean() ? pitch * Math.sqrt(3) / 2 : pitch * openings.between(0.75, 1.1);
    }

    /** Five holes at least, or a larger round in the middle: with fewer, corners of a rectangle lie on a circle as well. */
    private void boltCircle(double turn) {
        int n = 3 + random.nextInt(10);
        double d = openings.between(Math.max(24, n * PITCH_LEAST_MM / 2.8), 80);
        List<Point> centers = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            centers.add(Curve.at(Point.ORIGIN, d / 2, 2 * Math.PI * i / n));
        }
        fill(FeatureKind.ROUND, Pattern.Kind.BOLT_CIRCLE, centers, turn, new double[] {d, 0}, n, 1);
        if (n < 5 || random.nextBoolean()) {
            double bore = openings.between(7, d - 8);
            made.add(new TrueOpening(FeatureKind.ROUND, Point.ORIGIN, 0, bore, bore, 0, OpeningForms.round(bore)));
        }
    }

    private void fill(FeatureKind kind, Pattern.Kind how, List<Point> centers, double turn, double[] pitches,
            int columns, int rows) {
        TrueOpening one = openings.make(kind, HOLE_REACH_MM);
        double own = openings.between(0, 360);
        List<Point> turned = centers.stream().map(new Place(0, 0, turn)::of).toList();
        turned.forEach(p -> made.add(one.moved(new Place(p.x(), p.y(), own))));
        pattern = new TruePattern(how, turned, pitches[0], pitches[1], columns, rows);
    }
}
