// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.press.Machine;

/**
 * Chooses the tools and hits that make one part: the stage's entry point.
 *
 * <p>Input: features, material, thickness, machine, tools and holders owned, shop rules. Result: operations in part
 * coordinates, how far hits reach beyond the part, and findings: an error with a typed reason for each feature that cannot be
 * made, warnings and notes. The same input gives the same result.
 */
public final class ToolChoice {

    private final ToolingJob job;
    private final ChoiceWeights weights;
    private final List<Finding> findings = new ArrayList<>();

    private ToolChoice(ToolingJob job, ChoiceWeights weights) {
        this.job = job;
        this.weights = weights;
    }

    public static OperationList choose(ToolingJob job) {
        return choose(job, ChoiceWeights.USUAL);
    }

    public static OperationList choose(ToolingJob job, ChoiceWeights weights) {
        return new ToolChoice(job, weights).run();
    }

    private OperationList run() {
        Machine m = job.machine();
        if (job.thicknessMm() < m.minThicknessMm() - 1e-9 || job.thicknessMm() > m.maxThicknessMm() + 1e-9) {
            findings.add(Finding.of(ToolingReason.THICKNESS, "part " + job.features().part(), job.thicknessMm(), m.name(),
                    m.minThicknessMm(), m.maxThicknessMm()));
            return new OperationList(List.of(), 0, findings);
        }
        ToolLimits limits = new ToolLimits(job);
        Candidates ways = new Candidates(job, limits.usable(), weights);
        List<List<Candidate>> all = new ArrayList<>();
        for (Feature f : job.features().features()) {
            all.add(ways.of(f));
            if (all.getLast().isEmpty()) {
                findings.add(new WhyNot(job, limits).reason(f));
            }
        }
        int[] chosen = new Selection(all, new HitTime(m, weights).changeSeconds(), weights).choose();
        List<Candidate> taken = new ArrayList<>();
        for (int i = 0; i < chosen.length; i++) {
            if (chosen[i] >= 0) {
                taken.add(all.get(i).get(chosen[i]));
            }
        }
        return result(taken, ways.guard());
    }

    private OperationList result(List<Candidate> taken, PartGuard guard) {
        List<Operation> operations = new ArrayList<>();
        double overrun = 0;
        for (Candidate c : taken) {
            noteLoose(c);
            operations(c, operations);
            overrun = Math.max(overrun, c.reachMm());
        }
        findings.addAll(new OutlineProof(job, guard.shape()).check(taken));
        findings.addAll(new WebCheck(job).findings());
        noteTools(taken);
        return new OperationList(operations, overrun, findings);
    }

    private void noteLoose(Candidate c) {
        String subject = FeatureNames.subject(job.features().part(), c.feature());
        if (c.loose().slivers() > 0) {
            findings.add(Finding.at(c.feature().center(), ToolingReason.SLIVER, subject, c.loose().slivers(), job.thicknessMm()));
        }
        if (c.loose().slugByHandMm() > 0) {
            double falls = Math.min(job.rules().maxSlugMm(), job.machine().dropOpeningMm());
            findings.add(Finding.at(c.feature().center(), ToolingReason.SLUG_BY_HAND, subject,
                    c.loose().slugByHandMm(), falls));
        }
    }

    private static void operations(Candidate c, List<Operation> operations) {
        for (int i = 0; i < c.pieces().size(); i++) {
            Piece p = c.pieces().get(i);
            UsableTool t = p.tool();
            operations.add(new Operation(operations.size() + 1, c.feature(), t.tool(), p.kind(), p.hits(),
                    i == 0 ? c.joints() : List.of(), t.forceN(), t.strippingN(), t.clearanceNeedMm(), t.clearanceMm(), c.why()));
        }
    }

    /** Warnings of the tools used, once each. */
    private void noteTools(List<Candidate> taken) {
        Map<String, UsableTool> used = new LinkedHashMap<>();
        Map<String, Integer> hits = new LinkedHashMap<>();
        for (Candidate c : taken) {
            for (Piece p : c.pieces()) {
                used.put(p.tool().id(), p.tool());
                hits.merge(p.tool().id(), p.hits().size(), Integer::sum);
            }
        }
        used.forEach((id, t) -> {
            int n = hits.get(id);
            findings.addAll(t.warnings());
            if (n > t.hitsLeft()) {
                findings.add(Finding.of(ToolingReason.GRIND_DUE, t.tool().name(), t.hitsLeft(), n));
            }
        });
        Set<String> fixed = new LinkedHashSet<>();
        for (UsableTool t : used.values()) {
            boolean bound = t.tool().freedom() == AngleFreedom.FIXED && ToolFootprint.symmetryOrder(t.tool()) % 4 != 0;
            if (bound && fixed.add(t.tool().id())) {
                findings.add(Finding.of(ToolingReason.FIXED_ANGLE, t.tool().name(), t.tool().fixedAngleDeg()));
            }
        }
    }
}
