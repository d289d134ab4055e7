// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.Pattern;
import punchwright.engine.geometry.Point;
import punchwright.engine.press.Machine;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolSize;

/**
 * Cluster tools over the patterns found: rows and grids of several counts, punches standing at every opening or, where the web of
 * the die would be too thin, at every second or third; bolt circles whole.
 */
final class ClusterTools {

    private static final int MOST_PUNCHES = 36;
    private static final int MOST_ALONG = 12;
    private static final int MOST_EACH = 8;
    private static final int MOST_STEP = 3;

    private final Drafts drafts;

    ClusterTools(Drafts drafts) {
        this.drafts = drafts;
    }

    void add(BookPart part, Machine machine) {
        for (Pattern p : part.features().patterns()) {
            Feature f = part.features().features().get(p.features().getFirst() - 1);
            if (f.kind() == FeatureKind.ROUND || f.kind() == FeatureKind.SQUARE || f.kind() == FeatureKind.RECTANGLE) {
                shapes(p, f, part).stream().map(points -> draft(f, points)).filter(d -> Drafts.fits(d, machine))
                        .sorted(Comparator.comparingInt((ToolSize d) -> -d.cluster().size())
                                .thenComparing(ToolSize::id)).limit(MOST_EACH)
                        .forEach(d -> drafts.add(d, part, machine));
            }
        }
    }

    private static ToolSize draft(Feature f, List<Point> points) {
        return new ToolSize(ToolShape.CLUSTER, f.lengthMm(), f.widthMm(), 0, 0, points, null);
    }

    private static List<List<Point>> shapes(Pattern p, Feature f, BookPart part) {
        List<List<Point>> all = new ArrayList<>();
        if (p.kind() == Pattern.Kind.BOLT_CIRCLE) {
            if (p.columns() <= MOST_PUNCHES) {
                all.add(circle(p));
            }
            return all;
        }
        double size = Math.max(f.lengthMm(), f.widthMm());
        int step = step(p.pitchMm(), size, part.demand().thicknessMm());
        int rowStep = p.rows() < 2 ? 1 : step(p.rowPitchMm(), size, part.demand().thicknessMm());
        boolean staggered = p.kind() == Pattern.Kind.STAGGERED_GRID;
        for (int columns : counts(p.columns(), step)) {
            for (int rows : counts(p.rows(), rowStep)) {
                if (columns * rows >= 2 && columns * rows <= MOST_PUNCHES) {
                    all.add(grid(p, columns, step, rows, staggered ? 2 * Math.ceilDiv(rowStep, 2) : rowStep));
                }
            }
        }
        return all;
    }

    /** How many openings apart punches must stand for a web of the die of at least 2 mm and 1.5 t. Common practice, no source. */
    private static int step(double pitch, double size, double thickness) {
        int step = 1;
        while (step < MOST_STEP && step * pitch - size < Math.max(2, 1.5 * thickness)) {
            step++;
        }
        return step;
    }

    /** Counts along a row: those that go into it without rest, and the most. */
    private static Set<Integer> counts(int openings, int step) {
        int most = Math.min(MOST_ALONG, Math.ceilDiv(openings, step));
        Set<Integer> counts = new TreeSet<>();
        for (int n = 1; n <= most; n++) {
            if (openings % (n * step) == 0 || n == most) {
                counts.add(n);
            }
        }
        return counts;
    }

    private static List<Point> grid(Pattern p, int columns, int step, int rows, int rowStep) {
        List<Point> points = new ArrayList<>();
        double angle = Math.toRadians(p.angleDeg());
        for (int j = 0; j < rows; j++) {
            double shift = p.kind() == Pattern.Kind.STAGGERED_GRID && j * rowStep % 2 == 1 ? p.pitchMm() / 2 : 0;
            for (int i = 0; i < columns; i++) {
                double x = i * step * p.pitchMm() + shift;
                double y = j * rowStep * p.rowPitchMm();
                points.add(new Point(x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)));
            }
        }
        return centred(points);
    }

    private static List<Point> circle(Pattern p) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < p.columns(); i++) {
            points.add(Point.polar(p.pitchMm() / 2, Math.toRadians(p.angleDeg() + i * 360.0 / p.columns())));
        }
        return points;
    }

    private static List<Point> centred(List<Point> points) {
        double x = (points.stream().mapToDouble(Point::x).max().orElse(0) + points.stream().mapToDouble(Point::x).min()
                .orElse(0)) / 2;
        double y = (points.stream().mapToDouble(Point::y).max().orElse(0) + points.stream().mapToDouble(Point::y).min()
                .orElse(0)) / 2;
        return points.stream().map(q -> new Point(q.x() - x, q.y() - y)).toList();
    }
}
