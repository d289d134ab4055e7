// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Shape;

/**
 * What the weighing of one part found out, for weighing it again with other tools: a way to make a feature depends on its own
 * tools and on the part, not on what else is owned, so that only ways with a new tool are made anew.
 *
 * <p>Good for one part, machine, weights, wishes and rules with the same holders; {@link #withOtherSeats} for other places and
 * holders. Tools are told apart as objects, so that a changed record of a tool is another tool. Results are the same with and
 * without, but for rounding where equal openings take another one of them as their pattern. Not for several threads at once.
 */
public final class WaysMemory {

    private final Map<Tool, Sorted> sorted = new IdentityHashMap<>();
    private final WaysMemory base;
    private final Map<Object, Scene> scenes;
    private final Map<Feature, String> keys;
    private final Map<Feature, Map<Candidate, Optional<Candidate>>> moved;
    private PartGuard guard;

    public WaysMemory() {
        base = null;
        scenes = new HashMap<>();
        keys = new IdentityHashMap<>();
        moved = new IdentityHashMap<>();
    }

    private WaysMemory(WaysMemory base) {
        this.base = base;
        scenes = base.scenes;
        keys = base.keys;
        moved = base.moved;
        guard = base.guard;
    }

    /** For the same part on the machine with other places or holders, all else the same. */
    public WaysMemory withOtherSeats() {
        return new WaysMemory(this);
    }

    /**
     * Whether every tool of the job can do the same as with the places and holders before, so that the choice is the same; asked
     * of a memory {@link #withOtherSeats}.
     */
    public boolean sameTools(ToolingJob job, ToolWishes wishes) {
        if (base == null) {
            return false;
        }
        new ToolLimits(job, wishes.forbidden(), this);
        return job.tools().stream().allMatch(t -> base.sorted.containsKey(t)
                && base.sorted.get(t).usable() == sorted.get(t).usable());
    }

    /** A tool that is usable, or why it is refused. */
    record Sorted(UsableTool usable, Finding refusal) {
    }

    Sorted sorted(Tool tool, Function<Tool, Sorted> sort) {
        return sorted.computeIfAbsent(tool, t -> {
            Sorted now = sort.apply(t);
            Sorted before = base == null ? null : base.sorted.get(t);
            boolean same = before != null && before.usable() != null && now.usable() != null
                    && before.usable().turning() == now.usable().turning();
            return same ? before : now;
        });
    }

    PartGuard guard(Shape part) {
        if (guard == null) {
            guard = new PartGuard(part);
        }
        return guard;
    }

    /** Kind, direction and outline relative to the centre: equal for congruent openings that lie the same way. */
    String key(Feature feature) {
        return keys.computeIfAbsent(feature, Candidates::key);
    }

    Scene scene(Object key, Feature feature, Supplier<PartGuard> guard) {
        return scenes.computeIfAbsent(key, k -> new Scene(feature, guard.get()));
    }

    /** The candidate at a congruent feature; empty where it harms the part. */
    Optional<Candidate> moved(Candidate c, Feature to) {
        return moved.computeIfAbsent(to, f -> new IdentityHashMap<>())
                .computeIfAbsent(c, k -> Optional.of(k.movedTo(to)).filter(m -> m.clear(guard)));
    }

    /** A feature in its surroundings, with its candidates made so far. */
    static final class Scene {

        private final Feature feature;
        private final PartGuard guard;
        private final Map<UsableTool, List<Candidate>> oneHit = new IdentityHashMap<>();
        private final Map<List<List<Double>>, Outline> outlines = new HashMap<>();

        Scene(Feature feature, PartGuard guard) {
            this.feature = feature;
            this.guard = guard;
        }

        Feature feature() {
            return feature;
        }

        PartGuard guard() {
            return guard;
        }

        List<Candidate> oneHit(UsableTool tool, Supplier<List<Candidate>> make) {
            return known(oneHit, tool, make);
        }

        /** By the joints of every segment. */
        Outline outline(List<List<Double>> joints) {
            return outlines.computeIfAbsent(joints, j -> new Outline());
        }
    }

    /** An outline with its joints: ways of each tool to cut each segment, and what became of each choice of ways. */
    static final class Outline {

        private final List<Map<UsableTool, List<OutlineCutter.Open>>> open = new ArrayList<>();
        private final Map<Tools, Optional<Cut>> cuts = new HashMap<>();

        List<OutlineCutter.Open> open(int segment, UsableTool tool, Supplier<List<OutlineCutter.Open>> make) {
            while (open.size() <= segment) {
                open.add(new IdentityHashMap<>());
            }
            return known(open.get(segment), tool, make);
        }

        /** By the tool of each segment; empty when the ways leave something uncut. */
        Optional<Cut> cut(List<UsableTool> tools, Supplier<Optional<Cut>> make) {
            return known(cuts, new Tools(tools), make);
        }
    }

    /** The pieces of one choice of ways, and the candidates made of them. */
    static final class Cut {

        private final List<Piece> pieces;
        private final Map<Tools, List<Candidate>> candidates = new HashMap<>();

        Cut(List<Piece> pieces) {
            this.pieces = pieces;
        }

        List<Piece> pieces() {
            return pieces;
        }

        /** By the tools that may take away what is left inside. */
        List<Candidate> candidates(List<UsableTool> fillers, Supplier<List<Candidate>> make) {
            return known(candidates, new Tools(fillers), make);
        }
    }

    /** Tools in their order, told apart as objects. */
    private record Tools(List<UsableTool> all) {

        private Tools {
            all = List.copyOf(all);
        }

        @Override
        public boolean equals(Object other) {
            if (!(other instanceof Tools t) || t.all.size() != all.size()) {
                return false;
            }
            for (int i = 0; i < all.size(); i++) {
                if (all.get(i) != t.all.get(i)) {
                    return false;
                }
            }
            return true;
        }

        @Override
        public int hashCode() {
            int hash = 1;
            for (UsableTool t : all) {
                hash = 31 * hash + System.identityHashCode(t);
            }
            return hash;
        }
    }

    private static <K, V> V known(Map<K, V> map, K key, Supplier<V> make) {
        V value = map.get(key);
        if (value == null) {
            value = make.get();
            map.put(key, value);
        }
        return value;
    }
}
