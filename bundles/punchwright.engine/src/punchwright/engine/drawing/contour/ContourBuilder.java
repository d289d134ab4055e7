// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.finding.FindingCollector;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/** Chains pieces to closed contours. */
public final class ContourBuilder {

    private final double toleranceMm;
    private final FindingCollector findings;
    private final List<Contour> loops = new ArrayList<>();
    private final List<Contour> branchLoops = new ArrayList<>();
    private final List<Integer> leftByBranches = new ArrayList<>();
    private final List<List<Segment>> open = new ArrayList<>();

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
        builder.run(pieces);
        return builder.result();
    }

    private void run(List<Piece> pieces) {
        List<Piece> edges = new ArrayList<>();
        int tooShort = 0;
        for (Piece piece : pieces) {
            double length = piece.lengthMm();
            if (isClosed(piece, length)) {
                loops.add(new Contour(piece.segments()));
            } else if (length <= toleranceMm) {
                tooShort++;
            } else {
                edges.add(piece);
            }
        }
        if (tooShort > 0) {
            findings.add(ContourReason.SHORT_PIECES, tooShort, toleranceMm);
        }
        chain(edges);
    }

    private boolean isClosed(Piece piece, double lengthMm) {
        double gap = piece.start().distance(piece.end());
        return piece.closed() && gap <= toleranceMm || gap <= toleranceMm && lengthMm > 2 * toleranceMm;
    }

    private void chain(List<Piece> edges) {
        Edges unique = new EdgeCleaning(toleranceMm, findings).clean(edges);
        unique.closed().forEach(p -> loops.add(new Contour(p.segments())));
        ChainGraph graph = unique.graph();
        List<Integer> dangling = graph.peel();
        boolean[] seen = new boolean[graph.pieces.size()];
        for (int k = 0; k < seen.length; k++) {
            if (graph.alive[k] && !seen[k]) {
                closeComponent(graph, graph.component(k, seen));
            }
        }
        dangling.addAll(leftByBranches);
        OpenChains.group(graph, dangling).forEach(open::add);
        if (unique.widestGapMm() > 1e-6) {
            findings.add(ContourReason.GAPS_CLOSED, unique.widestGapMm());
        }
    }

    private void closeComponent(ChainGraph graph, List<Integer> group) {
        boolean simple = group.stream().allMatch(k -> graph.degree(graph.from[k]) == 2 && graph.degree(graph.to[k]) == 2);
        if (simple) {
            loops.add(walk(graph, group));
            return;
        }
        BranchWalk branch = new BranchWalk(graph, group);
        branch.run();
        branchLoops.addAll(branch.loops());
        leftByBranches.addAll(branch.left());
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

    private ContourSet result() {
        int simple = loops.size();
        loops.addAll(branchLoops);
        LoopCleaning cleaning = new LoopCleaning(toleranceMm);
        List<Contour> unique = cleaning.unique(loops, simple);
        if (cleaning.dropped() > 0) {
            findings.add(ContourReason.DUPLICATES, cleaning.dropped());
        }
        new Crossings(unique, toleranceMm, findings).report();
        List<Shape> shapes = shapes(unique);
        return new ContourSet(unique, open, shapes, cleaning.keptAfter());
    }

    private List<Shape> shapes(List<Contour> unique) {
        OpenChainReport report = new OpenChainReport(unique, findings);
        List<Contour> openOutlines = new ArrayList<>();
        for (List<Segment> chain : open) {
            if (report.report(chain)) {
                openOutlines.add(new Contour(chain));
            }
        }
        return new LoopNesting(unique).shapes().stream()
                .filter(s -> openOutlines.stream().noneMatch(o -> OpenChainReport.holds(o, s.outer()))).toList();
    }
}
