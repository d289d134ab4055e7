// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/** Chains pieces to closed contours. */
public final class ContourBuilder {

    private final double toleranceMm;
    private final FindingCollector findings;
    private final List<Loop> loops = new ArrayList<>();
    private final List<List<Segment>> open = new ArrayList<>();
    private boolean tangled;
    private final List<Piece> collapsed = new ArrayList<>();
    private final List<Point> duplicates = new ArrayList<>();

    private ContourBuilder(double toleranceMm, FindingCollector findings) {
        this.toleranceMm = toleranceMm;
        this.findings = findings;
    }

    /**
     * @param pieces      one for each entity that is cut, in mm
     * @param toleranceMm end points closer than this are one, above 0
     * @param findings    takes each repair and each doubt with its place
     */
    public static ContourSet build(List<Piece> pieces, double toleranceMm, FindingCollector findings) {
        return new ContourBuilder(toleranceMm, findings).run(pieces);
    }

    private ContourSet run(List<Piece> pieces) {
        Chaining first = new Chaining(toleranceMm, findings, loops, false);
        first.close(takeClosed(pieces));
        duplicates.addAll(first.duplicates());
        double otherwiseDrawnMm = dropRepeatedLoops();
        List<Loop> simple = loops.stream().filter(l -> !l.doubtful()).toList();
        LoopNesting simpleNesting = new LoopNesting(simple);
        double besides = otherwiseDrawnMm + 2 * collapsed.stream().mapToDouble(Piece::lengthMm).sum();
        Measure drawn = measure(first, simpleNesting, besides);
        List<Piece> loose = first.loose();
        loose.addAll(collapsed);
        if (!loose.isEmpty()) {
            open.addAll(OpenChains.group(withSplits(withoutOverlaps(loose)), toleranceMm));
            dropRepeatedLoops();
            if (tangled) {
                findings.add(ContourReason.TANGLED, 1);
            }
        }
        RepairNotes.report(findings, ContourReason.DUPLICATES, ContourReason.DUPLICATE, duplicates);
        boolean same = loops.size() == simple.size();
        return result(drawn, same ? simpleNesting : new LoopNesting(loops));
    }

    /** Pieces that close by themselves become loops; gives the others that have a length. */
    private List<Piece> takeClosed(List<Piece> pieces) {
        List<Piece> edges = new ArrayList<>(pieces.size());
        List<Piece> closed = new ArrayList<>();
        List<Point> tooShort = new ArrayList<>();
        for (Piece piece : pieces) {
            double length = piece.lengthMm();
            if (isClosed(piece, length)) {
                takeClosed(piece, closed);
            } else if (length <= toleranceMm) {
                tooShort.add(piece.start());
            } else {
                edges.add(piece);
            }
        }
        loops.addAll(closed.parallelStream().map(p -> Loop.of(p, false)).toList());
        RepairNotes.report(findings, ContourReason.SHORT_PIECES, ContourReason.SHORT_PIECE, tooShort, toleranceMm);
        return edges;
    }

    /** Two lines to and fro close, but to nothing: one of them is kept as an open line. */
    private void takeClosed(Piece piece, List<Piece> closed) {
        List<Segment> s = piece.segments();
        if (s.size() == 2 && s.get(0) instanceof Line && s.get(1) instanceof Line) {
            collapsed.add(new Piece(List.of(s.get(0)), false, piece.exact()));
        } else {
            closed.add(piece);
        }
    }

    private boolean isClosed(Piece piece, double lengthMm) {
        double gap = piece.start().distance(piece.end());
        return gap <= toleranceMm && (piece.closed() || lengthMm > 2 * toleranceMm);
    }

    /** Gives the length in mm of those that are drawn in another way than the one kept. */
    private double dropRepeatedLoops() {
        LoopCleaning cleaning = new LoopCleaning(toleranceMm);
        List<Loop> unique = cleaning.unique(loops);
        loops.clear();
        loops.addAll(unique);
        duplicates.addAll(cleaning.dropped());
        return cleaning.otherwiseDrawnMm();
    }

    private Measure measure(Chaining first, LoopNesting simple, double besidesMm) {
        double[] circles = loops.parallelStream().filter(l -> l.exact() && !l.doubtful())
                .mapToDouble(l -> l.contour().circleDiameterMm(toleranceMm)).filter(d -> d > 0).sorted().toArray();
        double length = DoubleStream.of(simple.loops().parallelStream().mapToDouble(Contour::lengthMm).toArray()).sum() + first.looseLengthMm() + besidesMm;
        return new Measure(simple.loops().size(), first.danglingChains(), Arrays.stream(circles).boxed().toList(),
                simple.netAreaMm2(), length);
    }

    private List<Piece> withoutOverlaps(List<Piece> loose) {
        if (loose.isEmpty()) {
            return loose;
        }
        List<Segment> closed = loops.stream().flatMap(l -> l.contour().segments().stream()).toList();
        Overlaps overlaps = new Overlaps(closed, loose, toleranceMm);
        tangled |= overlaps.isTangled();
        RepairNotes.report(findings, ContourReason.OVERLAPS, ContourReason.OVERLAP,
                IntStream.range(0, loose.size()).filter(overlaps::isDropped).mapToObj(i -> loose.get(i).middle()).toList());
        return IntStream.range(0, loose.size()).filter(i -> !overlaps.isDropped(i)).mapToObj(loose::get).toList();
    }

    /** Tries once more with loose pieces cut where they meet; keeps the cuts only when something closes. */
    private List<Piece> withSplits(List<Piece> loose) {
        Splitting splitting = new Splitting(loose, toleranceMm);
        List<Piece> cut = splitting.pieces();
        tangled |= splitting.isTangled();
        if (cut.isEmpty()) {
            return loose;
        }
        int before = loops.size();
        Chaining second = new Chaining(toleranceMm, findings, loops, true);
        second.close(cut);
        if (loops.size() == before) {
            return loose;
        }
        RepairNotes.report(findings, ContourReason.SPLIT, ContourReason.SPLIT_PLACE, splitting.places());
        return second.loose();
    }

    private ContourSet result(Measure drawn, LoopNesting nesting) {
        List<Contour> contours = nesting.loops();
        new Crossings(contours, nesting.boxes(), toleranceMm).report(nesting.index(), findings);
        OpenChainReport report = new OpenChainReport(contours, findings);
        open.forEach(report::report);
        if (nesting.isTangled()) {
            findings.add(ContourReason.TANGLED_NESTING, contours.size());
        }
        List<Shape> shapes = nesting.shapes().stream().filter(s -> !report.liesInOpenOutline(s.outer())).toList();
        return new ContourSet(contours, open, shapes, nesting.netAreaMm2(), drawn);
    }
}
