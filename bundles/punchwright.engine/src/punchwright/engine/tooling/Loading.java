// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.finding.Finding;

/** Which tool stands in which place for a plan, with reasons where one has no place. */
public record Loading(List<ToolUse> uses, List<Finding> findings) {

    public Loading {
        uses = List.copyOf(uses);
        findings = List.copyOf(findings);
    }
}
