// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import punchwright.engine.finding.Finding;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.tooling.HitRole;

/** What is still wrong with an order, since holdings and rules leave no better one. */
final class SequenceCheck {

    private SequenceCheck() {
    }

    static List<Finding> findings(SequenceJob job, List<PrecedenceRule> rules, List<SequencedHit> ordered) {
        List<Finding> findings = new ArrayList<>();
        addWithoutHolding(job, ordered, findings);
        addCircular(job, rules, findings);
        addCutsAfterForms(ordered, findings);
        return findings;
    }

    private static void addWithoutHolding(SequenceJob job, List<SequencedHit> ordered, List<Finding> findings) {
        Set<Integer> done = new HashSet<>();
        ordered.forEach(h -> done.add(h.hit().id()));
        List<SheetHit> left = job.hits().stream().filter(h -> !done.contains(h.id())).toList();
        if (!left.isEmpty()) {
            SheetHit first = left.getFirst();
            findings.add(Finding.at(first.at(), SequenceReason.NO_HOLDING, "hit " + first.id(), left.size(), first.id()));
        }
    }

    /** Two groups that each must come before the other. */
    private static void addCircular(SequenceJob job, List<PrecedenceRule> rules, List<Finding> findings) {
        List<ToolGroup> groups = Grouping.of(job.hits(), new OuterOperations(job.hits()));
        for (PrecedenceRule rule : rules) {
            for (ToolGroup a : groups) {
                for (ToolGroup b : groups) {
                    if (a != b && rule.puts(a, b) && rules.stream().anyMatch(r -> r.puts(b, a))) {
                        String name = a.use().tool().name();
                        findings.add(Finding.of(SequenceReason.RULES_CIRCULAR, "tool " + name, name, b.use().tool().name(),
                                rule.reason()));
                        return;
                    }
                }
            }
        }
    }

    private static void addCutsAfterForms(List<SequencedHit> ordered, List<Finding> findings) {
        List<SheetHit> forms = new ArrayList<>();
        Set<Integer> named = new HashSet<>();
        for (SequencedHit next : ordered) {
            SheetHit hit = next.hit();
            if (hit.role() == HitRole.FORM) {
                forms.add(hit);
                continue;
            }
            for (SheetHit form : forms) {
                if (Grouping.near(form, hit) && named.add(form.id())) {
                    findings.add(Finding.at(hit.at(), SequenceReason.CUT_AFTER_FORM, "hit " + hit.id(),
                            form.use().tool().name(), hit.id(), form.at().distance(hit.at())));
                }
            }
        }
    }
}
