// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.BoxIndex;
import punchwright.engine.geometry.Intersections;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Cuts loose pieces where another loose piece ends on them or crosses them. */
final class Splitting {

    /** More cuts than this mean a picture, not a contour. */
    private static final int MOST_CUTS = 100_000;

    private final double toleranceMm;
    private final List<Segment> segments = new ArrayList<>();
    private final List<Boolean> exact = new ArrayList<>();
    private static final long MOST_COMPARISONS = 1_000_000;

    private final WorkLimit limit = new WorkLimit(MOST_COMPARISONS);
    private final List<Point> places = new ArrayList<>();

    Splitting(List<Piece> loose, double toleranceMm) {
        this.toleranceMm = toleranceMm;
        for (Piece piece : loose) {
            for (Segment s : piece.segments()) {
                segments.add(s);
                exact.add(piece.exact());
            }
        }
    }

    /** The pieces after cutting; empty when there was nothing to cut or too much. */
    List<Piece> pieces() {
        List<Bounds> boxes = segments.stream().map(s -> s.bounds().grown(toleranceMm)).toList();
        BoxIndex index = new BoxIndex(boxes);
        List<Piece> out = new ArrayList<>();
        for (int i = 0; i < segments.size() && !isTangled(); i++) {
            cut(i, boxes.get(i), index, out);
        }
        return places.isEmpty() || isTangled() ? List.of() : out;
    }

    boolean isTangled() {
        return places.size() > MOST_CUTS || limit.isSpent();
    }

    List<Point> places() {
        return places;
    }

    private void cut(int i, Bounds box, BoxIndex index, List<Piece> out) {
        Segment s = segments.get(i);
        double margin = 1.5 * toleranceMm / Math.max(s.lengthMm(), toleranceMm);
        TreeSet<Double> shares = new TreeSet<>();
        index.query(box, j -> {
            if (j != i && shares.size() <= MOST_CUTS && !limit.isSpent()) {
                limit.spend(1);
                for (Point p : meetings(s, segments.get(j))) {
                    double t = s.shareNearest(p);
                    if (t > margin && t < 1 - margin && !isNear(shares, t, margin)) {
                        shares.add(t);
                    }
                }
            }
        });
        shares.forEach(t -> places.add(s.pointAt(t)));
        double from = 0;
        shares.add(1.0);
        for (double to : shares) {
            out.add(new Piece(List.of(s.part(from, to)), false, exact.get(i)));
            from = to;
        }
    }

    private static boolean isNear(TreeSet<Double> shares, double t, double margin) {
        Double below = shares.floor(t);
        Double above = shares.ceiling(t);
        return below != null && t - below < margin || above != null && above - t < margin;
    }

    private List<Point> meetings(Segment s, Segment other) {
        List<Point> points = new ArrayList<>(Intersections.of(s, other, toleranceMm / 2));
        for (Point end : List.of(other.start(), other.end())) {
            if (s.distance(end) <= toleranceMm) {
                points.add(end);
            }
        }
        return points;
    }
}
