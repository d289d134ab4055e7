// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.finding.Finding;
import punchwright.engine.holding.FormSpace;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.holding.TooNear;
import punchwright.engine.tooling.HitRole;

/** What is still wrong with an order, since holdings and rules leave no better one. */
final class SequenceCheck {

    private SequenceCheck() {
    }

    static List<Finding> findings(SequenceJob job, List<PrecedenceRule> rules, List<SequencedHit> ordered) {
        List<Finding> findings = new ArrayList<>();
        addWithoutHolding(job, ordered, findings);
        addCircular(job, rules, findings);
        addCutsAfterForms(job, ordered, findings);
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
        List<ToolGroup> groups = Grouping.of(job.hits(), new OuterOperations(job.hits()), job.thicknessMm());
        for (PrecedenceRule rule : rules) {
            for (ToolGroup a : groups) {
                for (ToolGroup b : groups) {
                    if (a != b && rule.puts(a, b) && PrecedenceRules.puts(rules, a, b) && PrecedenceRules.puts(rules, b, a)) {
                        String name = a.use().tool().name();
                        findings.add(Finding.of(SequenceReason.RULES_CIRCULAR, "tool " + name, name, b.use().tool().name(),
                                PrecedenceRules.number(rule), rule.reason()));
                        return;
                    }
                }
            }
        }
    }

    /** Hits that come too near to a form that stands already; of each form the nearest. */
    private static void addCutsAfterForms(SequenceJob job, List<SequencedHit> ordered, List<Finding> findings) {
        FormSpace space = new FormSpace(job.hits(), job.thicknessMm());
        Map<Integer, Integer> stands = new HashMap<>();
        Map<Integer, TooNear> nearest = new LinkedHashMap<>();
        for (SequencedHit next : ordered) {
            for (TooNear near : space.around(next.hit())) {
                if (stands.containsKey(near.form().id())) {
                    nearest.merge(near.form().id(), near, (a, b) -> b.gapMm() < a.gapMm() ? b : a);
                }
            }
            if (next.hit().role() == HitRole.FORM) {
                stands.put(next.hit().id(), next.holding());
            }
        }
        Map<Integer, Integer> holdings = new HashMap<>();
        ordered.forEach(h -> holdings.put(h.hit().id(), h.holding()));
        for (TooNear n : nearest.values()) {
            findings.add(finding(n, stands.get(n.form().id()), holdings.get(n.later().id())));
        }
    }

    private static Finding finding(TooNear n, int formed, int later) {
        boolean forms = n.later().role() == HitRole.FORM;
        return Finding.at(n.later().at(), SequenceReason.CUT_AFTER_FORM, "hit " + n.later().id(), n.form().use().tool().name(),
                n.later().id(), n.gapMm(), n.leastMm(), n.form().id(), n.later().use().tool().name(), forms ? 1 : 0,
                formed == later ? 0 : 1, formed + 1, later + 1, n.leastMm() - n.gapMm());
    }
}
