// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

    /** {@code alone}: candidates of openings standing alone, kept for other parts with the same tools. */
    Candidates(ToolingJob job, List<Unit> units, List<UsableTool> tools, ChoiceWeights weights,
            Map<String, List<Candidate>> alone) {
        this.job = job;
        this.alone = alone;
        this.tools = tools;
        guard = new PartGuard(job.features().shape());
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
            List<Candidate> standing = alone.computeIfAbsent(key(feature), k -> alone(feature)).stream()
                    .map(c -> c.movedTo(feature)).filter(c -> c.clear(guard)).toList();
            if (!standing.isEmpty()) {
                return standing;
            }
        }
        List<Double> own = unit.members().size() > 1 ? List.of() : joints.getOrDefault(feature.number(), List.of());
        List<Candidate> held = new Ways(job, tools, guard, time, others(feature.number())).of(feature, own);
        return held.isEmpty() ? new Ways(job, tools, guard, time, List.of()).of(feature, List.of()) : held;
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
        List<List<Candidate>> single = unit.members().stream().map(f -> of(new Unit(f, List.of(f)))).toList();
        for (Candidate first : single.getFirst()) {
            List<Candidate> each = single.stream().map(list -> list.stream().filter(c -> c.setups().equals(first.setups()))
                    .findFirst()
                    .orElse(null)).toList();
            if (each.stream().allMatch(c -> c != null)) {
                all.add(oneByOne(unit, each));
            }
        }
        all.sort(Comparator.comparingDouble(c -> c.cost(time.weights())));
        return all;
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
    private List<Candidate> alone(Feature feature) {
        Bounds b = feature.contour().bounds().grown(1000);
        Shape sheet = new Shape(Contour.rectangle(b.minX(), b.minY(), b.width(), b.height()), List.of(feature.contour()));
        return new Ways(job, tools, new PartGuard(sheet), time, List.of()).of(feature, List.of());
    }

    private static String key(Feature f) {
        StringBuilder key = new StringBuilder(f.kind() + " " + f.angleDeg());
        for (Segment s : f.path()) {
            Point a = s.start().minus(f.center());
            Point m = s.pointAt(0.5).minus(f.center());
            key.append(String.format(Locale.ROOT, " %.4f %.4f %.4f %.4f", a.x(), a.y(), m.x(), m.y()));
        }
        return key.toString();
    }
}
