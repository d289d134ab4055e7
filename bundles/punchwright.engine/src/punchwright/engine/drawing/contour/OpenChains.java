// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

import punchwright.engine.geometry.Segment;

/** Groups pieces that do not close into connected chains; a chain without branches comes in order from end to end. */
final class OpenChains {

    private final ChainGraph graph;
    private final Set<Integer> visited = new HashSet<>();
    private final Map<Integer, List<Integer>> atNode = new LinkedHashMap<>();

    private OpenChains(ChainGraph graph, List<Integer> pieces) {
        this.graph = graph;
        for (int k : pieces) {
            atNode.computeIfAbsent(graph.from[k], n -> new ArrayList<>()).add(k);
            atNode.computeIfAbsent(graph.to[k], n -> new ArrayList<>()).add(k);
        }
    }

    static List<List<Segment>> group(List<Piece> loose, double toleranceMm) {
        Nodes nodes = new Nodes(toleranceMm);
        loose.forEach(p -> {
            nodes.add(p.start());
            nodes.add(p.end());
        });
        int[] from = IntStream.range(0, loose.size()).map(k -> nodes.find(2 * k)).toArray();
        int[] to = IntStream.range(0, loose.size()).map(k -> nodes.find(2 * k + 1)).toArray();
        ChainGraph graph = new ChainGraph(loose, nodes, from, to);
        List<Integer> pieces = IntStream.range(0, loose.size()).boxed().toList();
        OpenChains chains = new OpenChains(graph, pieces);
        boolean[] done = new boolean[graph.pieces.size()];
        List<List<Segment>> out = new ArrayList<>();
        List<Integer> starts = new ArrayList<>();
        chains.atNode.forEach((node, list) -> {
            if (list.size() == 1) {
                starts.add(node);
            }
        });
        starts.addAll(chains.atNode.keySet());
        for (int node : starts) {
            List<Segment> chain = chains.follow(node, done);
            if (!chain.isEmpty()) {
                out.add(chain);
            }
        }
        return out;
    }

    /** Depth first from a node over pieces not yet used: along a path this is the order of travel. */
    private List<Segment> follow(int start, boolean[] done) {
        List<Segment> chain = new ArrayList<>();
        List<Integer> stack = new ArrayList<>(List.of(start));
        while (!stack.isEmpty()) {
            int node = stack.remove(stack.size() - 1);
            for (int k : visited.add(node) ? atNode.get(node) : List.<Integer>of()) {
                if (!done[k]) {
                    done[k] = true;
                    chain.addAll(graph.pieces.get(k).directed(graph.from[k] == node));
                    stack.add(graph.other(k, node));
                }
            }
        }
        return chain;
    }
}
