// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import punchwright.engine.feature.Feature;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Segment;
import punchwright.engine.tooling.HitReducer.ToolHit;

/**
 * Ways to cut an edge or the outline of an opening segment by segment.
 *
 * <p>Every usable tool is tried on every segment ({@link EdgeCutter}). Then, for one base tool after the other, each segment takes
 * the base tool where it can, else a tool already taken, else the cheapest; hits that others make needless are dropped. The
 * result is one set of pieces for each base tool, cheapest first, at most {@link #MOST}.
 */
final class OutlineCutter {

    /** Most candidates handed on for one outline. */
    static final int MOST = 16;

    private final ToolingRules rules;
    private final List<UsableTool> tools;
    private final EdgeCutter cutter;
    private final HitTime time;

    OutlineCutter(ToolingRules rules, List<UsableTool> tools, PartGuard guard, HitTime time) {
        this.rules = rules;
        this.tools = tools.stream().filter(t -> t.round() || t.rectangular() || t.tool().shape() == ToolShape.CORNER_RADIUS)
                .toList();
        this.cutter = new EdgeCutter(rules, guard);
        this.time = time;
    }

    /** One way to cut one segment. */
    private record Way(UsableTool tool, List<PartHit> hits, double seconds) {
    }

    /**
     * Sets of pieces that cut the path but for the joints; empty when some segment has no tool.
     *
     * @param joints per segment the middles of joints in mm from its start
     */
    List<List<Piece>> cuts(Feature feature, EdgePath path, List<List<Double>> joints) {
        List<Map<String, Way>> ways = new ArrayList<>();
        for (int i = 0; i < path.segments().size(); i++) {
            ways.add(ways(path, i, joints.get(i)));
            if (ways.get(i).isEmpty()) {
                return List.of();
            }
        }
        EdgeSamples samples = new EdgeSamples(path, joints, rules.microJointMm());
        HitReducer reducer = new HitReducer(samples, rules.scallopMm() + 0.005);
        List<List<Piece>> cuts = new ArrayList<>();
        for (List<Way> chosen : choices(ways)) {
            List<ToolHit> hits = reducer.reduce(toolHits(chosen));
            if (reducer.uncut(hits) == 0) {
                cuts.add(pieces(feature, hits));
            }
        }
        return cuts;
    }

    private Map<String, Way> ways(EdgePath path, int index, List<Double> joints) {
        Segment s = path.segments().get(index);
        EdgeSamples samples = new EdgeSamples(List.of(s), List.of(joints), rules.microJointMm());
        HitReducer reducer = new HitReducer(samples, rules.scallopMm() + 0.005);
        Map<String, Way> best = new LinkedHashMap<>();
        for (UsableTool tool : tools) {
            for (List<PartHit> hits : cutter.ways(path, index, joints, tool)) {
                Way way = new Way(tool, hits, time.seconds(hits) + 0.3 * time.changeSeconds());
                Way old = best.get(tool.tool().id());
                boolean cuts = s instanceof Line && path.segments().size() > 1
                        || reducer.uncut(hits.stream().map(h -> new ToolHit(tool, h)).toList()) == 0;
                if (cuts && (old == null || way.seconds() < old.seconds())) {
                    best.put(tool.tool().id(), way);
                }
            }
        }
        return best;
    }

    /** One choice for each base tool, the likely cheapest first. */
    private List<List<Way>> choices(List<Map<String, Way>> ways) {
        Set<String> bases = new TreeSet<>();
        ways.forEach(w -> bases.addAll(w.keySet()));
        List<List<Way>> choices = new ArrayList<>();
        for (String base : bases) {
            choices.add(choice(ways, base));
        }
        choices.sort(Comparator.comparingDouble(this::estimate));
        List<List<Way>> distinct = choices.stream().distinct().toList();
        return distinct.subList(0, Math.min(MOST, distinct.size()));
    }

    private double estimate(List<Way> choice) {
        long tools = choice.stream().map(w -> w.tool().tool().id()).distinct().count();
        return choice.stream().mapToDouble(Way::seconds).sum() + tools * time.changeSeconds();
    }

    private List<Way> choice(List<Map<String, Way>> ways, String base) {
        Set<String> taken = new TreeSet<>(Set.of(base));
        List<Way> chosen = new ArrayList<>();
        for (Map<String, Way> segment : ways) {
            Way way = segment.get(base);
            for (Way other : way == null ? segment.values() : List.<Way>of()) {
                way = way == null || cost(other, taken) < cost(way, taken) ? other : way;
            }
            taken.add(way.tool().tool().id());
            chosen.add(way);
        }
        return chosen;
    }

    private double cost(Way way, Set<String> taken) {
        return way.seconds() + (taken.contains(way.tool().tool().id()) ? 0 : time.changeSeconds());
    }

    private static List<ToolHit> toolHits(List<Way> ways) {
        return ways.stream().flatMap(w -> w.hits().stream().map(h -> new ToolHit(w.tool(), h))).toList();
    }

    /** Hits by tool, in the order in which the tools first appear. */
    private List<Piece> pieces(Feature feature, List<ToolHit> hits) {
        Map<UsableTool, List<PartHit>> byTool = new LinkedHashMap<>();
        hits.forEach(h -> byTool.computeIfAbsent(h.tool(), t -> new ArrayList<>()).add(h.hit()));
        return byTool.entrySet().stream().map(e -> Pieces.of(feature, e.getKey(), e.getValue())).toList();
    }
}
