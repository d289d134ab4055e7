// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.nesting.boxes.Work;

/**
 * Regular patterns of one piece: itself, or itself and its half turn, repeated along two directions, rows interlocked.
 *
 * <p>The pair is pushed together from many sides; a row repeats the cluster at the least pitch; the next row is shifted by a
 * share of the pitch and pushed down onto the row below. Pitches are outermost contacts, so that no copy further away can
 * overlap. The pattern that puts the most pieces into a rectangle wins.
 */
public final class Lattice {

    private static final int SIDES = 24;
    private static final int SHIFTS = 16;
    private static final int KEPT = 6;

    private record Basis(Cluster cluster, double ux, double uy, double vx, double vy) {
    }

    private final Piece piece;
    private final Contact contact;
    private final List<Basis> bases = new ArrayList<>();

    /** Finds the patterns of a piece; {@code precision} is the width to which pitches are found. */
    public Lattice(Piece piece, double precision, Work work) {
        this.piece = piece;
        this.contact = new Contact(work, precision);
        for (Cluster cluster : clusters()) {
            rows(cluster, true);
            rows(cluster, false);
        }
    }

    /** Every single turn, and the tightest pairs of a turn with its half turn. */
    private List<Cluster> clusters() {
        List<Cluster> pairs = new ArrayList<>();
        List<Cluster> out = new ArrayList<>();
        for (int t = 0; t < piece.turns.length; t++) {
            out.add(Cluster.single(piece, t));
            int half = halfTurn(t);
            if (half >= 0 && half != t) {
                pairs(t, half, pairs);
            }
        }
        pairs.sort(Comparator.comparingDouble(Cluster::boxArea));
        out.addAll(pairs.subList(0, Math.min(KEPT * piece.turns.length, pairs.size())));
        return out;
    }

    private int halfTurn(int t) {
        for (int h = 0; h < piece.turns.length; h++) {
            double d = Math.abs(piece.turns[h].angleDeg - piece.turns[t].angleDeg) % 360;
            if (Math.abs(d - 180) < 1e-9) {
                return h;
            }
        }
        return -1;
    }

    /** The half turn pushed against the turn from the right and from above, at many offsets across. */
    private void pairs(int t, int half, List<Cluster> pairs) {
        Cluster first = Cluster.single(piece, t);
        Cluster second = Cluster.single(piece, half);
        for (int s = 0; s <= SIDES; s++) {
            double share = (double) s / SIDES;
            double dy = first.minY() - second.maxY() + share * (first.maxY() - first.minY() + second.maxY() - second.minY());
            double dx = contact.outermost(second, first, first.minX() - second.minX(), dy, 1, 0, 0);
            pairs.add(first.with(piece, half, first.minX() - second.minX() + dx, dy));
            double ex = first.minX() - second.maxX() + share * (first.maxX() - first.minX() + second.maxX() - second.minX());
            double ey = contact.outermost(second, first, ex, first.minY() - second.minY(), 0, 1, 0);
            pairs.add(first.with(piece, half, ex, first.minY() - second.minY() + ey));
        }
    }

    /** Rows along x or along y, the next row at several shifts; keeps the tightest few. */
    private void rows(Cluster c, boolean alongX) {
        double pitch = contact.outermost(c, c, 0, 0, alongX ? 1 : 0, alongX ? 0 : 1, 0);
        List<Basis> found = new ArrayList<>();
        for (int s = 0; s < SHIFTS; s++) {
            double shift = pitch * s / SHIFTS;
            double rise = rise(c, pitch, shift, alongX);
            found.add(alongX ? new Basis(c, pitch, 0, shift, rise) : new Basis(c, 0, pitch, rise, shift));
        }
        found.sort(Comparator.comparingDouble(b -> Math.abs(b.ux * b.vy - b.uy * b.vx)));
        bases.addAll(found.subList(0, Math.min(3, found.size())));
        bases.add(alongX ? new Basis(c, pitch, 0, 0, rise(c, pitch, 0, true))
                : new Basis(c, 0, pitch, rise(c, pitch, 0, false), 0));
    }

    /** Least distance of rows, so that the k-th row, shifted k times, is clear of the first as well. */
    private double rise(Cluster c, double pitch, double shift, boolean alongX) {
        double height = alongX ? c.maxY() - c.minY() : c.maxX() - c.minX();
        double rise = clearOfRow(c, pitch, shift, alongX);
        for (int k = 2; k * rise < height && k < 20; k++) {
            rise = Math.max(rise, clearOfRow(c, pitch, k * shift, alongX) / k);
        }
        return rise;
    }

    private double clearOfRow(Cluster c, double pitch, double shift, boolean alongX) {
        double length = alongX ? c.maxX() - c.minX() : c.maxY() - c.minY();
        double rise = 0;
        double from = shift % pitch - pitch * Math.ceil((length + shift % pitch) / pitch);
        for (double s = from; s < length; s += pitch) {
            rise = alongX ? contact.outermost(c, c, s, 0, 0, 1, rise) : contact.outermost(c, c, 0, s, 1, 0, rise);
        }
        return rise;
    }

    /** The most pieces found in a rectangle from the origin, ordered by x; {@code most} or more are cut to that number. */
    public List<StripSearch.Placed> fill(double length, double width, int most) {
        List<StripSearch.Placed> best = List.of();
        for (Basis b : bases) {
            for (int i = 0; i < b.cluster.size(); i++) {
                for (int j = 0; j < b.cluster.size(); j++) {
                    List<StripSearch.Placed> placed = fill(b, length, width, i, j);
                    best = placed.size() > best.size() ? placed : best;
                }
            }
        }
        List<StripSearch.Placed> sorted = new ArrayList<>(best);
        sorted.sort(Comparator.comparingDouble((StripSearch.Placed p) -> p.x() + piece.turns[p.turn()].maxX)
                .thenComparingDouble(StripSearch.Placed::y));
        return List.copyOf(sorted.subList(0, Math.min(most, sorted.size())));
    }

    /** The lattice with member {@code left} of a cluster on the left edge and member {@code low} on the lower edge. */
    private List<StripSearch.Placed> fill(Basis b, double length, double width, int left, int low) {
        Cluster c = b.cluster;
        double ox = -c.x(left) - c.outline(left).minX;
        double oy = -c.y(low) - c.outline(low).minY;
        List<StripSearch.Placed> out = new ArrayList<>();
        double det = b.ux * b.vy - b.uy * b.vx;
        double reach = Math.hypot(length, width) + Math.hypot(c.maxX() - c.minX(), c.maxY() - c.minY());
        int rows = (int) Math.ceil(reach * Math.hypot(b.ux, b.uy) / Math.abs(det)) + 1;
        double u = Math.hypot(b.ux, b.uy);
        for (int v = -rows; v <= rows; v++) {
            double rx = ox + v * b.vx;
            double ry = oy + v * b.vy;
            double start = b.ux != 0 ? rx : ry;
            int from = (int) Math.floor((-reach - start) / u);
            int to = (int) Math.ceil((reach - start) / u);
            for (int k = from; k <= to; k++) {
                add(c, rx + k * b.ux, ry + k * b.uy, length, width, out);
            }
        }
        return out;
    }

    private static void add(Cluster c, double dx, double dy, double length, double width, List<StripSearch.Placed> out) {
        double eps = 1e-9 * (length + width);
        for (int i = 0; i < c.size(); i++) {
            Outline o = c.outline(i);
            double x = c.x(i) + dx;
            double y = c.y(i) + dy;
            if (x + o.minX >= -eps && y + o.minY >= -eps && x + o.maxX <= length + eps && y + o.maxY <= width + eps) {
                out.add(new StripSearch.Placed(0, c.member(i).turn(), o.angleDeg, x, y));
            }
        }
    }
}
