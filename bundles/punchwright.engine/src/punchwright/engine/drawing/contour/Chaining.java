// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** One pass of chaining: adds what closes to the loops and keeps what does not. */
final class Chaining {

    private final double toleranceMm;
    private final FindingCollector findings;
    private final List<Loop> loops;
    private final boolean cutBefore;
    private final List<Piece> dangling = new ArrayList<>();
    private final List<Piece> branchLeft = new ArrayList<>();
    private double branchingLengthMm;
    private double nearDuplicatesMm;
    private List<Point> duplicates = List.of();

    /** @param cutBefore whether the pieces are parts of cut lines, so that the loops are doubtful */
    Chaining(double toleranceMm, FindingCollector findings, List<Loop> loops, boolean cutBefore) {
        this.toleranceMm = toleranceMm;
        this.findings = findings;
        this.loops = loops;
        this.cutBefore = cutBefore;
    }

    void close(List<Piece> edges) {
        Edges unique = new EdgeCleaning(toleranceMm).clean(edges);
        duplicates = unique.duplicates();
        nearDuplicatesMm = unique.nearDuplicatesMm();
        unique.closed().forEach(p -> loops.add(Loop.of(p, cutBefore)));
        ChainGraph graph = unique.graph();
        graph.peel().forEach(k -> dangling.add(graph.pieces.get(k)));
        boolean[] seen = new boolean[graph.pieces.size()];
        for (int k = 0; k < seen.length; k++) {
            if (graph.alive[k] && !seen[k]) {
                closeComponent(graph, k, seen);
            }
        }
        if (!cutBefore) {
            Gap.report(unique.gaps(), findings);
        }
    }

    /** Makes loops of the connected component of a piece; it has no dangling ends. */
    private void closeComponent(ChainGraph graph, int piece, boolean[] seen) {
        int[] cycle = graph.simpleCycle(piece);
        if (cycle != null) {
            addCycle(graph, cycle, seen);
            return;
        }
        List<Integer> group = graph.component(piece, seen);
        group.forEach(k -> branchingLengthMm += graph.pieces.get(k).lengthMm());
        BranchWalk branch = new BranchWalk(graph, group);
        branch.run();
        branch.loops().forEach(c -> loops.add(Loop.of(c, false, true)));
        branch.left().forEach(k -> branchLeft.add(graph.pieces.get(k)));
        for (int node : branch.busyNodes()) {
            Point p = graph.point(node);
            findings.addAt(p, ContourReason.BRANCHING, p.x(), p.y(), branch.degreeOf(node));
        }
    }

    /** The cycle has piece numbers, negative (ones' complement) for a piece passed backwards. */
    private void addCycle(ChainGraph graph, int[] cycle, boolean[] seen) {
        List<Segment> segments = new ArrayList<>(cycle.length);
        boolean exact = true;
        for (int k : cycle) {
            Piece piece = graph.pieces.get(k < 0 ? ~k : k);
            if (piece.segments().size() == 1) {
                Segment only = piece.segments().get(0);
                segments.add(k >= 0 ? only : only.reversed());
            } else {
                segments.addAll(piece.directed(k >= 0));
            }
            exact &= piece.exact();
            seen[k < 0 ? ~k : k] = true;
        }
        loops.add(Loop.of(new Contour(segments), exact, cutBefore));
    }

    List<Point> duplicates() {
        return duplicates;
    }

    /** Pieces that belong to no loop. */
    List<Piece> loose() {
        List<Piece> loose = new ArrayList<>(dangling);
        loose.addAll(branchLeft);
        return loose;
    }

    /** Groups of pieces with loose ends. */
    int danglingChains() {
        return OpenChains.group(dangling, toleranceMm).size();
    }

    /** Length of all pieces outside simple loops: dangling ones, those of branching components, and near duplicates. */
    double looseLengthMm() {
        return nearDuplicatesMm + branchingLengthMm + dangling.stream().mapToDouble(Piece::lengthMm).sum();
    }
}
