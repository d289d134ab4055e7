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

    private static final double EXACT_MM = 1e-6;

    private final double toleranceMm;
    private final FindingCollector findings;
    private final List<Loop> loops;
    private final boolean cutBefore;
    private final List<Piece> dangling = new ArrayList<>();
    private final List<Piece> branchLeft = new ArrayList<>();
    private double branchingLengthMm;
    private int duplicates;

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
        unique.closed().forEach(p -> loops.add(new Loop(new Contour(p.segments()), p.exact(), cutBefore)));
        ChainGraph graph = unique.graph();
        graph.peel().forEach(k -> dangling.add(graph.pieces.get(k)));
        boolean[] seen = new boolean[graph.pieces.size()];
        for (int k = 0; k < seen.length; k++) {
            if (graph.alive[k] && !seen[k]) {
                closeComponent(graph, graph.component(k, seen));
            }
        }
        if (unique.widestGapMm() > EXACT_MM && !cutBefore) {
            findings.add(ContourReason.GAPS_CLOSED, unique.widestGapMm());
        }
    }

    /** Makes loops of a connected component without dangling ends. */
    private void closeComponent(ChainGraph graph, List<Integer> group) {
        if (group.stream().allMatch(k -> graph.degree(graph.from[k]) == 2 && graph.degree(graph.to[k]) == 2)) {
            boolean exact = group.stream().allMatch(k -> graph.pieces.get(k).exact());
            loops.add(new Loop(walk(graph, group), exact, cutBefore));
            return;
        }
        group.forEach(k -> branchingLengthMm += graph.pieces.get(k).lengthMm());
        BranchWalk branch = new BranchWalk(graph, group);
        branch.run();
        branch.loops().forEach(c -> loops.add(new Loop(c, false, true)));
        branch.left().forEach(k -> branchLeft.add(graph.pieces.get(k)));
        for (int node : branch.busyNodes()) {
            Point p = graph.point(node);
            findings.addAt(p, ContourReason.BRANCHING, p.x(), p.y(), branch.degreeOf(node));
        }
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

    int duplicates() {
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

    /** Length of all pieces outside simple loops: dangling ones and those of branching components. */
    double looseLengthMm() {
        return branchingLengthMm + dangling.stream().mapToDouble(Piece::lengthMm).sum();
    }
}
