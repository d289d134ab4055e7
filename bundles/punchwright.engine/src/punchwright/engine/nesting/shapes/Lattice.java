// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.nesting.boxes.Work;
import punchwright.engine.nesting.shapes.LatticeSearch.Basis;

/**
 * Regular patterns of one piece: itself, or itself and its half turn, repeated along two directions, rows interlocked.
 *
 * <p>The pair is pushed together from many sides; a row repeats the cluster at the least pitch in some direction; the next row is
 * shifted by a share of the pitch and pushed down onto the row below; the tightest are pressed further by small changes. Pitches are outermost contacts, so that no copy further away can
 * overlap. The pattern that puts the most pieces into a rectangle wins.
 */
public final class Lattice {

    /** Patterns that are laid out in a rectangle: the tightest. */
    private static final int TRIED = 40;

    private final Piece piece;
    private final List<Basis> bases;

    /** Finds the patterns of a piece; {@code precision} is the width to which pitches are found. */
    public Lattice(Piece piece, double precision, Work work) {
        this.piece = piece;
        List<Basis> all = new LatticeSearch(piece, precision, work).bases();
        this.bases = all.subList(0, Math.min(TRIED, all.size()));
    }

    /** The largest share of an endless sheet that a pattern found covers, 0 to 1. */
    public double density() {
        return bases.stream().mapToDouble(b -> piece.area / b.areaEach()).max()
                .orElse(0);
    }

    /** The most pieces found in a rectangle from the origin, ordered by x; {@code most} or more are cut to that number. */
    public List<StripSearch.Placed> fill(double length, double width, int most) {
        List<StripSearch.Placed> best = List.of();
        for (Basis b : bases) {
            for (int i = 0; i < b.cluster().size(); i++) {
                for (int j = 0; j < b.cluster().size(); j++) {
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
        Cluster c = b.cluster();
        double ox = -c.x(left) - c.outline(left).minX;
        double oy = -c.y(low) - c.outline(low).minY;
        List<StripSearch.Placed> out = new ArrayList<>();
        double u = Math.hypot(b.ux(), b.uy());
        double rise = Math.abs(b.ux() * b.vy() - b.uy() * b.vx()) / u;
        double reach = Math.hypot(length, width) + Math.hypot(c.maxX() - c.minX(), c.maxY() - c.minY());
        int rows = (int) Math.ceil(reach / rise) + 1;
        for (int v = -rows; v <= rows; v++) {
            double rx = ox + v * b.vx();
            double ry = oy + v * b.vy();
            double start = (rx * b.ux() + ry * b.uy()) / u;
            int from = (int) Math.floor((-reach - start) / u);
            int to = (int) Math.ceil((reach - start) / u);
            for (int k = from; k <= to; k++) {
                add(c, rx + k * b.ux(), ry + k * b.uy(), length, width, out);
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
