// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import punchwright.engine.feature.Feature;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Segment;
import punchwright.engine.tooling.EdgeCutter.Proposal;
import punchwright.engine.tooling.HitReducer.ToolHit;

/**
 * Ways to cut an edge or the outline of an opening segment by segment.
 *
 * <p>Every usable tool is tried on every segment ({@link EdgeCutter}). Then, for one base tool after the other, each segment
 * takes
 * the base tool where it can, else a tool already taken, else the cheapest; hits that others make needless are dropped. The
 * result is one set of pieces for each base tool, cheapest first.
 */
final class OutlineCutter {

    /** Most candidates handed on for one outline. */
    static final int MOST = 12;
    /** Most tools weighed for one segment. */
    private static final int WAYS = 10;

    private final ToolingRules rules;
    private final List<UsableTool> tools;
    private final EdgeCutter cutter;
    private final WaysMemory.Scene scene;
    private final HitTime time;

    OutlineCutter(ToolingRules rules, List<UsableTool> tools, WaysMemory.Scene scene, HitTime time) {
        this.rules = rules;
        this.tools = tools.stream().filter(t -> t.round() || t.rectangular() || t.tool().shape() == ToolShape.CORNER_RADIUS)
                .toList();
        this.cutter = new EdgeCutter(rules);
        this.scene = scene;
        this.time = time;
    }

    /** A proposal not yet held against the part. */
    static final class Open {

        private final UsableTool tool;
        private final Proposal proposal;
        private final double seconds;
        private Optional<Way> way;

        Open(UsableTool tool, Proposal proposal, double seconds) {
            this.tool = tool;
            this.proposal = proposal;
            this.seconds = seconds;
        }

        double seconds() {
            return seconds;
        }
    }

    /** One way to cut one segment. */
    record Way(UsableTool tool, List<PartHit> hits, double seconds) {
    }

    /**
     * Sets of pieces that cut the path but for the joints; empty when some segment has no tool.
     *
     * @param joints per segment the middles of joints in mm from its start
     * @param most   most sets wanted
     */
    List<WaysMemory.Cut> cuts(Feature feature, EdgePath path, List<List<Double>> joints, int most) {
        WaysMemory.Outline outline = scene.outline(joints);
        List<Map<String, Way>> ways = new ArrayList<>();
        for (int i = 0; i < path.segments().size(); i++) {
            ways.add(ways(outline, path, i, joints.get(i)));
            if (ways.get(i).isEmpty()) {
                return List.of();
            }
        }
        HitReducer reducer = new HitReducer(new EdgeSamples(path, joints, rules.microJointMm()), rules.scallopMm() + 0.005);
        List<WaysMemory.Cut> cuts = new ArrayList<>();
        for (List<Way> chosen : choices(ways, most)) {
            outline.cut(chosen.stream().map(Way::tool).toList(), () -> cut(feature, chosen, reducer)).ifPresent(cuts::add);
        }
        return cuts;
    }

    private Optional<WaysMemory.Cut> cut(Feature feature, List<Way> chosen, HitReducer reducer) {
        List<ToolHit> hits = reducer.reduce(toolHits(chosen));
        return reducer.uncut(hits) == 0 ? Optional.of(new WaysMemory.Cut(pieces(feature, hits))) : Optional.empty();
    }

    /** The cheapest ways to cut one segment, at most {@link #WAYS} tools, that do no harm to the part. */
    private Map<String, Way> ways(WaysMemory.Outline outline, EdgePath path, int index, List<Double> joints) {
        List<Open> open = new ArrayList<>();
        for (UsableTool tool : tools) {
            open.addAll(outline.open(index, tool, () -> cutter.proposals(path, index, joints, tool).stream()
                    .map(p -> new Open(tool, p, seconds(path, p))).toList()));
        }
        open.sort(Comparator.comparingDouble(Open::seconds));
        Map<String, Way> best = new LinkedHashMap<>();
        for (Open o : open) {
            if (best.size() < WAYS && !best.containsKey(o.tool.id())) {
                way(o, path.segments(), index, joints).ifPresent(w -> best.put(o.tool.id(), w));
            }
        }
        return best;
    }

    private Optional<Way> way(Open o, List<Segment> path, int index, List<Double> joints) {
        if (o.way == null) {
            boolean alone = path.size() == 1 || !(path.get(index) instanceof Line);
            EdgeSamples samples = alone ? new EdgeSamples(List.of(path.get(index)), List.of(joints), rules.microJointMm()) : null;
            o.way = o.proposal.variants().stream().filter(v -> scene.guard().clear(o.tool.footprint(), v))
                    .filter(v -> !alone || cutsAll(samples, o.tool, v)).findFirst().map(v -> new Way(o.tool, v, o.seconds));
        }
        return o.way;
    }

    private double seconds(EdgePath path, Proposal p) {
        double web = path.closed() && path.before() == null ? 0 : p.acrossMm() * time.weights().reachSecondsPerMm();
        return time.seconds(p.variants().getFirst()) + 0.3 * time.changeSeconds() + web;
    }

    private boolean cutsAll(EdgeSamples samples, UsableTool tool, List<PartHit> hits) {
        HitReducer reducer = new HitReducer(samples, rules.scallopMm() + 0.005);
        return reducer.uncut(hits.stream().map(h -> new ToolHit(tool, h)).toList()) == 0;
    }

    /** One choice for each base tool, the likely cheapest first. */
    private List<List<Way>> choices(List<Map<String, Way>> ways, int most) {
        Set<String> bases = new TreeSet<>();
        ways.forEach(w -> bases.addAll(w.keySet()));
        List<List<Way>> choices = new ArrayList<>();
        for (String base : bases) {
            choices.add(choice(ways, base));
        }
        choices.sort(Comparator.comparingDouble(this::estimate));
        List<List<Way>> distinct = distinct(choices);
        return distinct.subList(0, Math.min(most, distinct.size()));
    }

    private static List<List<Way>> distinct(List<List<Way>> choices) {
        Map<List<String>, List<Way>> distinct = new LinkedHashMap<>();
        choices.forEach(c -> distinct.putIfAbsent(c.stream().map(w -> w.tool().id()).toList(), c));
        return List.copyOf(distinct.values());
    }

    private double estimate(List<Way> choice) {
        long tools = choice.stream().map(w -> w.tool().id()).distinct().count();
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
            taken.add(way.tool().id());
            chosen.add(way);
        }
        return chosen;
    }

    private double cost(Way way, Set<String> taken) {
        return way.seconds() + (taken.contains(way.tool().id()) ? 0 : time.changeSeconds());
    }

    private static List<ToolHit> toolHits(List<Way> ways) {
        return ways.stream().flatMap(w -> w.hits().stream().map(h -> new ToolHit(w.tool(), h))).toList();
    }

    /** Hits by tool, in the order in which the tools first appear. */
    private List<Piece> pieces(Feature feature, List<ToolHit> hits) {
        Map<String, List<ToolHit>> byTool = new LinkedHashMap<>();
        hits.forEach(h -> byTool.computeIfAbsent(h.tool().id(), t -> new ArrayList<>()).add(h));
        return byTool.values().stream()
                .map(run -> Pieces.of(feature, run.getFirst().tool(), run.stream().map(ToolHit::hit).toList())).toList();
    }
}
