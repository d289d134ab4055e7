// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.List;

import punchwright.engine.finding.Finding;

/** Holdings in order, together covering every hit that can be made; unreachable hits are errors. */
public record HoldingPlan(List<Holding> holdings, List<Finding> findings) {

    public HoldingPlan {
        holdings = List.copyOf(holdings);
        findings = List.copyOf(findings);
    }
}
