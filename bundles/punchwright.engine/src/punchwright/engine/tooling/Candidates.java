// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import punchwright.engine.feature.Feature;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/**
 * The candidates of all features of one part. Congruent openings share their work: their candidates are made once as if the
 * opening stood alone in a large sheet, then each copy keeps those that harm nothing around it; where none is left the feature
 * is worked out on its own.
 */
final class Candidates {

    private final ToolingJob job;
    private final List<UsableTool> tools;
    private final PartGuard guard;
    private final HitTime time;
    private final Map<Integer, List<Double>> joints;
    private final Map<Integer, List<MicroJoint>> planned = new TreeMap<>();
    private final Map<String, List<Candidate>> alone;
    private final WaysMemory memory;

    /** {@code alone}: candidates of openings standing alone, kept for other parts with the same tools. */
    Candidates(ToolingJob job, List<Unit> units, List<UsableTool> tools, ChoiceWeights weights,
            Map<String, List<Candidate>> alone, WaysMemory memory) {
        this.memory = memory;
        this.job = job;
        this.alone = alone;
        this.tools = tools;
        guard = memory.guard(job.features().shape());
        time = new HitTime(job.machine(), weights);
        List<Feature> single = units.stream().filter(u -> u.members().size() == 1).map(Unit::feature).toList();
        joints = new TreeMap<>(JointPlan.outer(single, job.features().shape().outer(), job.rules()));
        for (Feature f : single) {
            planned.put(f.number(), joints.getOrDefault(f.number(), List.of()).stream().map(at -> new MicroJoint(
                    f.path().getFirst().pointAt(at / f.path().getFirst().lengthMm()), job.rules().microJointMm())).toList());
        }
    }

    PartGuard guard() {
        return guard;
    }

    /** Cheapest first. */
    List<Candidate> of(Unit unit) {
        if (unit.cluster() != null) {
            return ofCluster(unit);
        }
        Feature feature = unit.feature();
        if (feature.isOpening()) {
            List<Candidate> standing = alone.computeIfAbsent(memory.key(feature), k -> alone(feature, k)).stream()
                    .flatMap(c -> memory.moved(c, feature).stream()).toList();
            if (!standing.isEmpty()) {
                return standing;
            }
        }
        List<Double> own = unit.members().size() > 1 ? List.of() : joints.getOrDefault(feature.number(), List.of());
        List<Candidate> held = on(feature, others(feature.number()), own);
        return held.isEmpty() ? on(feature, List.of(), List.of()) : held;
    }

    /** Whether there is one at all for a single feature; an opening's hits stay inside it and harm nothing on the part. */
    boolean any(Feature feature) {
        if (feature.isOpening() && ways(scene(feature, memory.key(feature)), List.of()).any(List.of())) {
            return true;
        }
        List<MicroJoint> keep = others(feature.number());
        return ways(scene(feature, keep), keep).any(joints.getOrDefault(feature.number(), List.of()))
                || ways(scene(feature, List.of()), List.of()).any(List.of());
    }

    /** On the part; {@code keep}: joints of other edges. */
    private List<Candidate> on(Feature feature, List<MicroJoint> keep, List<Double> joints) {
        return ways(scene(feature, keep), keep).of(joints);
    }

    private Ways ways(WaysMemory.Scene scene, List<MicroJoint> keep) {
        return new Ways(job, tools, scene, time, keep);
    }

    private WaysMemory.Scene scene(Feature feature, List<MicroJoint> keep) {
        return memory.scene(List.of(feature.number(), feature.kind(), feature.path().size(), keep), feature, () -> guard);
    }

    private WaysMemory.Scene scene(Feature feature, String key) {
        return memory.scene(key, feature, () -> sheetAround(feature));
    }

    /** The cluster's hits, or each opening by itself the same way. */
    private List<Candidate> ofCluster(Unit unit) {
        List<Candidate> all = new ArrayList<>();
        Piece piece = new Piece(unit.cluster().tool(), OperationKind.CLUSTER, unit.cluster().hits());
        Candidate together = new Candidate(unit.feature(), List.of(piece), List.of(), time.seconds(piece.hits()),
                piece.tool().wearPerHit() * piece.hits().size(), 0, Loose.NONE,
                piece.hits().size() + " hits of " + piece.tool().tool().cluster().size() + " openings");
        if (together.clear(guard)) {
            all.add(together);
        }
        List<Map<Set<String>, Candidate>> single = unit.members().stream().map(f -> bySetups(of(new Unit(f, List.of(f)))))
                .toList();
        for (Set<String> setups : single.getFirst().keySet()) {
            if (single.stream().allMatch(s -> s.containsKey(setups))) {
                all.add(oneByOne(unit, single.stream().map(s -> s.get(setups)).toList()));
            }
        }
        all.sort(Comparator.comparingDouble(c -> c.cost(time.weights())));
        return all;
    }

    /** The cheapest with each set-up, cheapest first. */
    private static Map<Set<String>, Candidate> bySetups(List<Candidate> list) {
        Map<Set<String>, Candidate> first = new LinkedHashMap<>();
        list.forEach(c -> first.putIfAbsent(c.setups(), c));
        return first;
    }

    private static Candidate oneByOne(Unit unit, List<Candidate> each) {
        return new Candidate(unit.feature(), each.stream().flatMap(c -> c.pieces().stream()).toList(),
                each.stream().flatMap(c -> c.joints().stream()).toList(), each.stream().mapToDouble(Candidate::seconds).sum(),
                each.stream().mapToDouble(Candidate::wear).sum(), 0, each.getFirst().loose(), each.getFirst().why(), each);
    }

    /** Planned joints of all other edges. */
    private List<MicroJoint> others(int feature) {
        return planned.entrySet().stream().filter(e -> e.getKey() != feature).flatMap(e -> e.getValue().stream()).toList();
    }

    /** As if there were nothing but the opening. */
    private List<Candidate> alone(Feature feature, String key) {
        return ways(scene(feature, key), List.of()).of(List.of());
    }

    private static PartGuard sheetAround(Feature feature) {
        Bounds b = feature.contour().bounds().grown(1000);
        Shape sheet = new Shape(Contour.rectangle(b.minX(), b.minY(), b.width(), b.height()), List.of(feature.contour()));
        return new PartGuard(sheet);
    }

    static String key(Feature f) {
        StringBuilder key = new StringBuilder(f.kind() + " " + f.angleDeg());
        for (Segment s : f.path()) {
            Point a = s.start().minus(f.center());
            Point m = s.pointAt(0.5).minus(f.center());
            key.append(String.format(Locale.ROOT, " %.4f %.4f %.4f %.4f", a.x(), a.y(), m.x(), m.y()));
        }
        return key.toString();
    }
}
