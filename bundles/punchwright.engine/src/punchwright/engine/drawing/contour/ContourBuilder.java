// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/** Chains pieces to closed contours. */
public final class ContourBuilder {

    private final double toleranceMm;
    private final FindingCollector findings;
    private final List<Loop> loops = new ArrayList<>();
    private final List<List<Segment>> open = new ArrayList<>();
    private int duplicates;

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
        ContourBuilder builder = new ContourBuilder(toleranceMm, findings);
        builder.chain(builder.takeClosed(pieces));
        return builder.result();
    }

    /** Pieces that close by themselves become loops; gives the others that have a length. */
    private List<Piece> takeClosed(List<Piece> pieces) {
        List<Piece> edges = new ArrayList<>();
        int tooShort = 0;
        for (Piece piece : pieces) {
            double length = piece.lengthMm();
            if (isClosed(piece, length)) {
                loops.add(new Loop(new Contour(piece.segments()), piece.exact(), false));
            } else if (length <= toleranceMm) {
                tooShort++;
            } else {
                edges.add(piece);
            }
        }
        if (tooShort > 0) {
            findings.add(ContourReason.SHORT_PIECES, tooShort, toleranceMm);
        }
        return edges;
    }

    private boolean isClosed(Piece piece, double lengthMm) {
        double gap = piece.start().distance(piece.end());
        return gap <= toleranceMm && (piece.closed() || lengthMm > 2 * toleranceMm);
    }

    private void chain(List<Piece> edges) {
        List<Piece> loose = close(edges, false);
        loose = withoutOverlaps(loose);
        loose = withSplits(loose);
        open.addAll(OpenChains.group(loose, toleranceMm));
    }

    /** Makes loops of what closes; gives the pieces that belong to none. */
    private List<Piece> close(List<Piece> edges, boolean split) {
        Edges unique = new EdgeCleaning(toleranceMm).clean(edges);
        duplicates += split ? 0 : unique.duplicates();
        unique.closed().forEach(p -> loops.add(new Loop(new Contour(p.segments()), p.exact(), split)));
        ChainGraph graph = unique.graph();
        List<Integer> dangling = graph.peel();
        boolean[] seen = new boolean[graph.pieces.size()];
        for (int k = 0; k < seen.length; k++) {
            if (graph.alive[k] && !seen[k]) {
                dangling.addAll(closeComponent(graph, graph.component(k, seen), split));
            }
        }
        if (unique.widestGapMm() > 1e-6 && !split) {
            findings.add(ContourReason.GAPS_CLOSED, unique.widestGapMm());
        }
        return dangling.stream().map(graph.pieces::get).toList();
    }

    private List<Piece> withoutOverlaps(List<Piece> loose) {
        if (loose.isEmpty()) {
            return loose;
        }
        List<Segment> closed = loops.stream().flatMap(l -> l.contour().segments().stream()).toList();
        Overlaps overlaps = new Overlaps(closed, loose, toleranceMm);
        List<Piece> kept = IntStream.range(0, loose.size()).filter(i -> !overlaps.isDropped(i)).mapToObj(loose::get).toList();
        if (kept.size() < loose.size()) {
            findings.add(ContourReason.OVERLAPS, loose.size() - kept.size());
        }
        return kept;
    }

    /** Tries once more with loose pieces cut where they meet; keeps the cuts only when something closes. */
    private List<Piece> withSplits(List<Piece> loose) {
        if (loose.isEmpty()) {
            return loose;
        }
        Splitting splitting = new Splitting(loose, toleranceMm);
        List<Piece> cut = splitting.pieces();
        int before = loops.size();
        List<Piece> left = cut.isEmpty() ? loose : close(cut, true);
        if (loops.size() == before) {
            return loose;
        }
        findings.add(ContourReason.SPLIT, splitting.cuts());
        return left;
    }

    /** Makes loops of a connected component without dangling ends; gives the pieces that belong to none. */
    private List<Integer> closeComponent(ChainGraph graph, List<Integer> group, boolean split) {
        boolean simple = group.stream().allMatch(k -> graph.degree(graph.from[k]) == 2 && graph.degree(graph.to[k]) == 2);
        if (simple) {
            boolean exact = group.stream().allMatch(k -> graph.pieces.get(k).exact());
            loops.add(new Loop(walk(graph, group), exact, split));
            return List.of();
        }
        BranchWalk branch = new BranchWalk(graph, group);
        branch.run();
        branch.loops().forEach(c -> loops.add(new Loop(c, false, true)));
        for (int node : branch.busyNodes()) {
            Point p = graph.point(node);
            findings.addAt(p, ContourReason.BRANCHING, p.x(), p.y(), branch.degreeOf(node));
        }
        return branch.left();
    }

    private static Contour walk(ChainGraph graph, List<Integer> group) {
        List<Segment> segments = new ArrayList<>();
        int start = group.get(0);
        int piece = start;
        int node = graph.from[start];
        do {
            boolean forward = graph.from[piece] == node;
            segments.addAll(graph.pieces.get(piece).directed(forward));
            node = graph.other(piece, node);
            List<Integer> two = graph.at(node);
            piece = two.get(0) == piece ? two.get(1) : two.get(0);
        } while (piece != start);
        return new Contour(segments);
    }

    private ContourSet result() {
        LoopCleaning cleaning = new LoopCleaning(toleranceMm);
        List<Loop> unique = cleaning.unique(loops);
        if (duplicates + cleaning.dropped() > 0) {
            findings.add(ContourReason.DUPLICATES, duplicates + cleaning.dropped());
        }
        List<Contour> contours = unique.stream().map(Loop::contour).toList();
        new Crossings(contours, toleranceMm, findings).report();
        LoopNesting nesting = new LoopNesting(contours);
        List<Double> circles = unique.stream().filter(Loop::exact).map(l -> l.contour().circleDiameterMm(toleranceMm))
                .filter(d -> d > 0).sorted().toList();
        int branching = (int) unique.stream().filter(Loop::branching).count();
        return new ContourSet(contours, open, shapes(contours, nesting), circles, nesting.netAreaMm2(), branching);
    }

    /** Part shapes, without those inside an outline that does not close. */
    private List<Shape> shapes(List<Contour> contours, LoopNesting nesting) {
        OpenChainReport report = new OpenChainReport(contours, findings);
        open.forEach(report::report);
        return nesting.shapes().stream().filter(s -> !report.liesInOpenOutline(s.outer())).toList();
    }
}
