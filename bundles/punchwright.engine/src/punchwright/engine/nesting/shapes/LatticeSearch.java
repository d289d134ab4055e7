// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.geometry.Angles;
import punchwright.engine.nesting.boxes.Work;

/**
 * Finds regular patterns of one piece: a form is a pair (or a single piece), the direction of its rows and the shift of the next
 * row. Rows along and across the sheet come first, rows in other directions for the tightest pairs; the tightest forms are
 * pressed by small changes of all three.
 */
final class LatticeSearch {

    private static final int SIDES = 24;
    private static final int SHIFTS = 16;
    private static final int DIRECTIONS = 12;
    private static final int KEPT = 8;
    private static final int PRESSED = 10;
    private static final int ROUNDS = 60;

    /** Repeats a cluster along u and v. */
    record Basis(Cluster cluster, double ux, double uy, double vx, double vy) {

        /** Area of sheet for one piece. */
        double areaEach() {
            return Math.abs(ux * vy - uy * vx) / cluster.size();
        }
    }

    /** What a pattern is made from: turns, side and offset of the pair, direction of the rows, shift as a share of the pitch. */
    private record Form(int turn, int half, boolean beside, double across, double directionDeg, double share) {

        boolean samePair(Form o) {
            return turn == o.turn && half == o.half && beside == o.beside && Math.abs(across - o.across) < 1e-9;
        }

        boolean pair() {
            return half >= 0;
        }
    }

    private record Found(Form form, Basis basis) {
    }

    private final Piece piece;
    private final Contact contact;
    private final Work work;
    private final List<Found> found = new ArrayList<>();

    LatticeSearch(Piece piece, double precision, Work work) {
        this.piece = piece;
        this.work = work;
        this.contact = new Contact(work, precision);
    }

    /** The patterns found, the tightest first; plain grids of every turn are among them. */
    List<Basis> bases() {
        List<Form> forms = forms();
        for (int i = 0; i < forms.size() && (i < piece.turns.length + KEPT || !work.spent(0.3)); i++) {
            rows(forms.get(i), 0, SHIFTS);
            rows(forms.get(i), 90, SHIFTS);
        }
        sort();
        for (Form f : turned()) {
            for (int d = 1; d < DIRECTIONS && !work.spent(0.4); d++) {
                if (2 * d != DIRECTIONS) {
                    rows(f, 180.0 * d / DIRECTIONS, SHIFTS / 2);
                }
            }
        }
        sort();
        for (Found f : tightest()) {
            if (!work.spent(0.5)) {
                found.add(pressed(f));
            }
        }
        sort();
        return found.stream().map(Found::basis).toList();
    }

    /** What is tried in more directions: single pieces, and the tightest pairs. */
    private List<Form> turned() {
        List<Form> out = new ArrayList<>();
        for (int t = 0; t < piece.turns.length; t++) {
            out.add(new Form(t, -1, false, 0, 0, 0));
        }
        found.stream().map(Found::form).filter(Form::pair).map(f -> new Form(f.turn, f.half, f.beside, f.across, 0, 0)).distinct()
                .limit(KEPT).forEach(out::add);
        return out;
    }

    /** The tightest patterns of different pairs. */
    private List<Found> tightest() {
        List<Found> out = new ArrayList<>();
        for (Found f : found) {
            if (out.size() < PRESSED && out.stream().noneMatch(o -> o.form.samePair(f.form))) {
                out.add(f);
            }
        }
        return out;
    }

    private void sort() {
        found.sort(Comparator.comparingDouble(f -> f.basis.areaEach()));
    }

    /** Every single turn, and the tightest pairs of a turn with its half turn. */
    private List<Form> forms() {
        List<Form> out = new ArrayList<>();
        List<Form> pairs = new ArrayList<>();
        for (int t = 0; t < piece.turns.length; t++) {
            out.add(new Form(t, -1, false, 0, 0, 0));
            int half = halfTurn(t);
            for (int s = 0; half > t && s <= SIDES; s++) {
                pairs.add(new Form(t, half, true, (double) s / SIDES, 0, 0));
                pairs.add(new Form(t, half, false, (double) s / SIDES, 0, 0));
            }
        }
        pairs.sort(Comparator.comparingDouble(f -> cluster(f).boxArea()));
        out.addAll(pairs.subList(0, Math.min(2 * KEPT * piece.turns.length, pairs.size())));
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

    /** The half turn pushed against the turn from the right or from above, at an offset across. */
    private Cluster cluster(Form f) {
        Cluster first = Cluster.single(piece, f.turn);
        if (!f.pair()) {
            return first;
        }
        Cluster second = Cluster.single(piece, f.half);
        if (f.beside) {
            double dy = first.minY() - second.maxY() + f.across * (first.maxY() - first.minY() + second.maxY() - second.minY());
            double dx = contact.outermost(second, first, first.minX() - second.minX(), dy, 1, 0, 0);
            return first.with(piece, f.half, first.minX() - second.minX() + dx, dy);
        }
        double dx = first.minX() - second.maxX() + f.across * (first.maxX() - first.minX() + second.maxX() - second.minX());
        double dy = contact.outermost(second, first, dx, first.minY() - second.minY(), 0, 1, 0);
        return first.with(piece, f.half, dx, first.minY() - second.minY() + dy);
    }

    /** Rows in a direction, the next row at several shifts; keeps the tightest few and the plain grid. */
    private void rows(Form f, double directionDeg, int shifts) {
        Cluster c = cluster(f);
        List<Found> some = new ArrayList<>();
        for (int s = 0; s < shifts; s++) {
            Form form = new Form(f.turn, f.half, f.beside, f.across, directionDeg, (double) s / shifts);
            some.add(new Found(form, basis(c, form)));
        }
        Found plain = some.get(0);
        some.sort(Comparator.comparingDouble(x -> x.basis.areaEach()));
        found.addAll(some.subList(0, Math.min(3, some.size())));
        if (!found.contains(plain)) {
            found.add(plain);
        }
    }

    private Basis basis(Cluster c, Form f) {
        double ux = Angles.cosDeg(f.directionDeg);
        double uy = Angles.sinDeg(f.directionDeg);
        double pitch = contact.outermost(c, c, 0, 0, ux, uy, 0);
        double shift = (f.share - Math.floor(f.share)) * pitch;
        double rise = rise(c, pitch, shift, ux, uy);
        return new Basis(c, pitch * ux, pitch * uy, shift * ux - rise * uy, shift * uy + rise * ux);
    }

    /** Least distance of rows, so that the k-th row, shifted k times, is clear of the first as well. */
    private double rise(Cluster c, double pitch, double shift, double ux, double uy) {
        double[] across = c.extent(-uy, ux);
        double rise = clearOfRow(c, pitch, shift, ux, uy);
        for (int k = 2; k * rise < across[1] - across[0] && k < 20; k++) {
            rise = Math.max(rise, clearOfRow(c, pitch, k * shift, ux, uy) / k);
        }
        return rise;
    }

    private double clearOfRow(Cluster c, double pitch, double shift, double ux, double uy) {
        double[] along = c.extent(ux, uy);
        double length = along[1] - along[0];
        double rise = 0;
        double from = shift % pitch - pitch * Math.ceil((length + shift % pitch) / pitch);
        for (double s = from; s < length; s += pitch) {
            rise = contact.outermost(c, c, s * ux, s * uy, -uy, ux, rise);
        }
        return rise;
    }

    /** Small changes of offset, direction and shift, each kept where it saves area, in ever smaller steps. */
    private Found pressed(Found start) {
        Found best = start;
        double step = 1;
        for (int round = 0; round < ROUNDS && step > 1e-4 && !work.spent(0.6); round++) {
            Found better = null;
            for (int way = 0; way < 6 && better == null; way++) {
                Form f = changed(best.form, way, step);
                Basis b = f == null ? null : basis(cluster(f), f);
                better = b != null && b.areaEach() < best.basis.areaEach() * (1 - 1e-7) ? new Found(f, b) : null;
            }
            best = better == null ? best : better;
            step = better == null ? step / 2 : step;
        }
        return best;
    }

    private static Form changed(Form f, int way, double step) {
        double by = way % 2 == 0 ? step : -step;
        return switch (way / 2) {
            case 0 -> f.pair() ? new Form(f.turn, f.half, f.beside, f.across + by / SIDES, f.directionDeg, f.share) : null;
            case 1 -> new Form(f.turn, f.half, f.beside, f.across, f.directionDeg + by * 8, f.share);
            default -> new Form(f.turn, f.half, f.beside, f.across, f.directionDeg, f.share + by / SHIFTS);
        };
    }
}
