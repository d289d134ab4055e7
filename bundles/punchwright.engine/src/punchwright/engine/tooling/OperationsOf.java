// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;

/** Turns the chosen candidates into numbered operations, and says what is worth knowing about them. */
final class OperationsOf {

    private final ToolingJob job;
    private final List<Unit> units;
    private final List<Candidate> taken = new ArrayList<>();
    private final List<Unit> made = new ArrayList<>();
    private final List<Finding> findings;
    private final Map<String, HitSet> done = new TreeMap<>();
    private JointCheck joints;

    OperationsOf(ToolingJob job, List<Unit> units, List<List<Candidate>> candidates, int[] chosen, List<Finding> findings) {
        this.job = job;
        this.units = units;
        this.findings = findings;
        for (int i = 0; i < chosen.length; i++) {
            if (chosen[i] >= 0) {
                taken.add(candidates.get(i).get(chosen[i]));
                made.add(units.get(i));
            }
        }
    }

    OperationList list(PartGuard guard) {
        joints = new JointCheck(guard.shape(), taken);
        List<Operation> operations = new ArrayList<>();
        double overrun = 0;
        for (int i = 0; i < taken.size(); i++) {
            noteLoose(taken.get(i));
            add(made.get(i), taken.get(i), operations);
            overrun = Math.max(overrun, taken.get(i).reachMm());
        }
        findings.addAll(new OutlineProof(job, guard.shape()).check(taken, taken.size() == units.size()));
        findings.addAll(new WebCheck(job).findings());
        findings.addAll(new TradeRules(job).findings(operations));
        noteTools();
        return new OperationList(operations, overrun, findings);
    }

    private void add(Unit unit, Candidate c, List<Operation> operations) {
        if (!c.each().isEmpty()) {
            c.each().forEach(one -> add(new Unit(one.feature(), List.of(one.feature())), one, operations));
            return;
        }
        String why = c.why();
        if (unit.members().size() > 1) {
            why += "; makes features " + numbers(unit.members());
        }
        List<MicroJoint> standing = joints.standing(c);
        for (Piece p : c.pieces()) {
            List<PartHit> hits = made(p);
            UsableTool t = p.tool();
            if (!hits.isEmpty()) {
                operations.add(new Operation(operations.size() + 1, nearest(unit, p), t.tool(), p.kind(), hits, standing,
                        t.forceN(),
                        t.strippingN(), t.clearanceNeedMm(), t.clearanceMm(), why));
                standing = List.of();
            }
        }
        if (!standing.isEmpty()) {
            giveTo(operations, c.pieces().getFirst().tool().id(), standing);
        }
    }

    /** All hits were made already: the joints go to the last operation of the same tool. */
    private static void giveTo(List<Operation> operations, String tool, List<MicroJoint> more) {
        for (int i = operations.size() - 1; i >= 0; i--) {
            Operation o = operations.get(i);
            if (o.tool().id().equals(tool)) {
                List<MicroJoint> all = new ArrayList<>(o.joints());
                all.addAll(more);
                operations.set(i, new Operation(o.number(), o.feature(), o.tool(), o.kind(), o.hits(), all, o.forceN(),
                        o.strippingN(),
                        o.clearanceNeedMm(), o.clearanceMm(), o.why()));
                return;
            }
        }
    }

    /** The piece's hits less those that an operation before has made already at the same place; a form may be hit there again. */
    private List<PartHit> made(Piece p) {
        HitSet before = done.computeIfAbsent(p.tool().id(), id -> new HitSet(p.tool().tool()));
        List<PartHit> fresh = p.hits().stream().distinct().filter(before::add).toList();
        return p.kind() == OperationKind.FORMING ? p.hits().stream().filter(fresh::contains).toList() : fresh;
    }

    /** "1 to 4, 7": runs of numbers. */
    static String numbers(List<Feature> features) {
        List<String> runs = new ArrayList<>();
        int[] n = features.stream().mapToInt(Feature::number).sorted().toArray();
        for (int i = 0; i < n.length;) {
            int j = i;
            while (j + 1 < n.length && n[j + 1] == n[j] + 1) {
                j++;
            }
            runs.add(j > i + 1 ? n[i] + " to " + n[j] : j > i ? n[i] + ", " + n[j] : "" + n[i]);
            i = j + 1;
        }
        return String.join(", ", runs);
    }

    /** The edge that the piece's first hit lies nearest to. */
    private static Feature nearest(Unit unit, Piece p) {
        Feature nearest = unit.members().getFirst();
        if (unit.cluster() != null) {
            return nearest;
        }
        for (Feature f : unit.members().subList(1, unit.members().size())) {
            if (distance(f, p) < distance(nearest, p) - 1e-6) {
                nearest = f;
            }
        }
        return nearest;
    }

    private static double distance(Feature f, Piece p) {
        return f.path().isEmpty() ? 0 : f.path().getFirst().distance(p.hits().getFirst().at());
    }

    private void noteLoose(Candidate c) {
        String subject = FeatureNames.subject(job.features().part(), c.feature());
        if (c.loose().slivers() > 0) {
            findings.add(Finding.at(c.feature().center(), ToolingReason.SLIVER, subject, c.loose().slivers(), job.thicknessMm()));
        }
        if (c.loose().slugByHandMm() > 0) {
            double falls = Math.min(job.rules().maxSlugMm(), job.machine().dropOpeningMm());
            findings.add(Finding.at(c.feature().center(), ToolingReason.SLUG_BY_HAND, subject, c.loose().slugByHandMm(), falls));
        }
    }

    /** Warnings of the tools used, once each. */
    private void noteTools() {
        Map<String, UsableTool> used = new LinkedHashMap<>();
        Map<String, Integer> hits = new LinkedHashMap<>();
        for (Candidate c : taken) {
            for (Piece p : c.pieces()) {
                used.put(p.tool().id(), p.tool());
                hits.merge(p.tool().id(), p.hits().size(), Integer::sum);
            }
        }
        used.forEach((id, t) -> {
            findings.addAll(t.warnings());
            if (hits.get(id) > t.hitsLeft()) {
                findings.add(Finding.of(ToolingReason.GRIND_DUE, t.tool().name(), t.hitsLeft(), hits.get(id)));
            }
        });
        Set<String> fixed = new LinkedHashSet<>();
        for (UsableTool t : used.values()) {
            boolean bound = t.tool().freedom() == AngleFreedom.FIXED && ToolFootprint.symmetryOrder(t.tool()) % 4 != 0;
            if (bound && fixed.add(t.id())) {
                findings.add(Finding.of(ToolingReason.FIXED_ANGLE, t.tool().name(), t.tool().fixedAngleDeg()));
            }
        }
    }
}
