// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.layouts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

import punchwright.engine.geometry.Angles;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.LayoutFigures;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.Nester;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.Placement;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.nesting.Watch;

/**
 * One sheet as a person arranges it. Every change gives a new sheet; pieces are named by their index, from 0.
 *
 * @param job    what the layout stage is asked: parts with their angles and webs, margins, costs
 * @param sheet  the stock item
 * @param runs   how many sheets are made so
 * @param pieces the pieces
 */
public record ArrangedSheet(NestingJob job, SheetOffer sheet, int runs, List<Piece> pieces) {

    public ArrangedSheet {
        pieces = List.copyOf(pieces);
    }

    /** A layout of the program, nothing locked. */
    public static ArrangedSheet of(NestingJob job, Layout layout) {
        return new ArrangedSheet(job, layout.sheet(), layout.runs(), layout.placements().stream()
                .map(p -> new Piece(p.partId(), p.pose().x(), p.pose().y(), p.pose().angleDeg(), false)).toList());
    }

    /** As the engine wants it. */
    public Layout layout() {
        return new Layout(sheet, pieces.stream().map(p -> new Placement(p.partId(), p.pose())).toList(), runs);
    }

    /** What the job knows of a piece's part; empty when it is not ordered. */
    public Optional<NestPart> part(Piece piece) {
        return job.parts().stream().filter(p -> p.id().equals(piece.partId())).findFirst();
    }

    /** Box of a piece on the sheet, mm; a point for a part that is not ordered. */
    public Bounds box(Piece piece) {
        return part(piece).map(p -> p.shape().outer().moved(piece.pose()).bounds())
                .orElse(new Bounds(piece.xMm(), piece.yMm(), piece.xMm(), piece.yMm()));
    }

    /** Use, cost, remnants and bound. Pieces that are not ordered are left aside. */
    public Nesting figures() {
        return LayoutFigures.of(job, List.of(orderedOnly()));
    }

    /** As the engine wants it, without pieces that are not ordered. */
    public Layout orderedOnly() {
        return new Layout(sheet, pieces.stream().filter(p -> part(p).isPresent()).map(p -> new Placement(p.partId(), p.pose()))
                .toList(), runs);
    }

    /** What is wrong with it. */
    public List<PieceProblem> problems() {
        return SheetProblems.of(this, -1);
    }

    /** What is wrong with one piece and its neighbours: fast enough for every move of the hand. */
    public List<PieceProblem> problemsOf(int index) {
        return SheetProblems.of(this, index);
    }

    private ArrangedSheet with(int index, UnaryOperator<Piece> change) {
        List<Piece> changed = new ArrayList<>(pieces);
        changed.set(index, change.apply(changed.get(index)));
        return new ArrangedSheet(job, sheet, runs, changed);
    }

    /** A piece moved to a place, not snapped. */
    public ArrangedSheet moved(int index, double xMm, double yMm) {
        return with(index, p -> p.at(xMm, yMm));
    }

    /** A piece moved to a place, snapped to the edges and neighbours that are nearer than {@code reachMm}. */
    public ArrangedSheet snapped(int index, double xMm, double yMm, double reachMm) {
        return new Snap(moved(index, xMm, yMm), index).near(reachMm);
    }

    /** A piece moved along an axis to the next place where it touches or lines up with something, a web apart. */
    public ArrangedSheet pushed(int index, int stepX, int stepY) {
        return new Snap(this, index).next(stepX, stepY);
    }

    /** A piece at the next of its allowed angles ({@code by} 1) or the one before (-1), about the middle of its box. */
    public ArrangedSheet turned(int index, int by) {
        Piece piece = pieces.get(index);
        List<Double> angles = part(piece).map(NestPart::anglesDeg).orElse(List.of(piece.angleDeg())).stream()
                .map(Angles::normalizeDeg).distinct().sorted().toList();
        int now = angles.indexOf(Angles.normalizeDeg(piece.angleDeg()));
        double angle = angles.get(Math.floorMod(Math.max(now, 0) + (now < 0 ? 0 : by), angles.size()));
        Bounds before = box(piece);
        Piece turned = new Piece(piece.partId(), piece.xMm(), piece.yMm(), angle, piece.locked());
        Bounds after = box(turned);
        double dx = middle(before.minX(), before.maxX()) - middle(after.minX(), after.maxX());
        double dy = middle(before.minY(), before.maxY()) - middle(after.minY(), after.maxY());
        return with(index, p -> turned.at(turned.xMm() + dx, turned.yMm() + dy));
    }

    private static double middle(double a, double b) {
        return (a + b) / 2;
    }

    /** A piece locked or not. */
    public ArrangedSheet locked(int index, boolean lock) {
        return with(index, p -> p.locked(lock));
    }

    /** Without some pieces. */
    public ArrangedSheet without(Set<Integer> indices) {
        List<Piece> rest = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            if (!indices.contains(i)) {
                rest.add(pieces.get(i));
            }
        }
        return new ArrangedSheet(job, sheet, runs, rest);
    }

    /**
     * One more piece of a part: where it finds room around all others, else at the lower left, where it overlaps and the check
     * says so. It is the last of the pieces.
     */
    public ArrangedSheet added(String partId) {
        ArrangedSheet filled = filled(List.of(partId), Watch.SILENT);
        if (filled.pieces.size() > pieces.size()) {
            return filled;
        }
        List<Piece> more = new ArrayList<>(pieces);
        double angle = job.parts().stream().filter(p -> p.id().equals(partId)).findFirst().map(p -> p.anglesDeg().getFirst())
                .orElse(0.0);
        Bounds box = box(new Piece(partId, 0, 0, angle, false));
        more.add(new Piece(partId, job.margins().edgeMm() - box.minX(), job.margins().belowMm() - box.minY(), angle, false));
        return new ArrangedSheet(job, sheet, runs, more);
    }

    /** All pieces stay; of the parts named those are added that find room around them. */
    public ArrangedSheet filled(List<String> partIds, Watch watch) {
        List<Placement> all = new ArrayList<>(layout().placements());
        Set<Integer> fixed = new LinkedHashSet<>();
        for (int i = 0; i < pieces.size(); i++) {
            fixed.add(i);
        }
        partIds.forEach(id -> all.add(new Placement(id, new Piece(id, 0, 0, 0, false).pose())));
        List<Piece> placed = new ArrayList<>(pieces);
        Nester.around(job, new Layout(sheet, all, runs), fixed, watch).placements().stream().skip(pieces.size())
                .forEach(p -> placed.add(new Piece(p.partId(), p.pose().x(), p.pose().y(), p.pose().angleDeg(), false)));
        return new ArrangedSheet(job, sheet, runs, placed);
    }

    /**
     * The pieces that are not locked placed anew around those that are. Where not all of them find room again, or nothing is
     * won, the sheet stays as it is. Locked pieces come first afterwards.
     */
    public ArrangedSheet aroundLocked(Watch watch) {
        List<Piece> fixed = pieces.stream().filter(Piece::locked).toList();
        Set<Integer> indices = new LinkedHashSet<>();
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i).locked()) {
                indices.add(i);
            }
        }
        List<Placement> placed = Nester.around(job, layout(), indices, watch).placements();
        if (placed.size() < pieces.size()) {
            return this;
        }
        List<Piece> anew = new ArrayList<>(fixed);
        placed.stream().skip(fixed.size())
                .forEach(p -> anew.add(new Piece(p.partId(), p.pose().x(), p.pose().y(), p.pose().angleDeg(), false)));
        ArrangedSheet result = new ArrangedSheet(job, sheet, runs, anew);
        return problems().isEmpty() && reach(result) >= reach(this) - 1e-6 ? this : result;
    }

    private static double reach(ArrangedSheet s) {
        return s.pieces.stream().mapToDouble(p -> s.box(p).maxX()).max().orElse(0);
    }
}
