// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

import punchwright.engine.finding.Finding;

/** One order on one machine: its sheet jobs in order, and every finding. */
public record EnginePlan(PlanRequest request, List<SheetJob> jobs, List<Finding> findings) {

    public EnginePlan {
        jobs = List.copyOf(jobs);
        findings = List.copyOf(findings);
    }

    /** Whether the order can be made so: no error in any stage, every sheet proven. */
    public boolean makeable() {
        return findings.stream().noneMatch(Finding::isError)
                && jobs.stream().flatMap(j -> j.runs().stream()).allMatch(r -> r.proof().proven());
    }
}
