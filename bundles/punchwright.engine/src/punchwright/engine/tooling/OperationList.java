// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * The operations that make one part, with reasons where a feature cannot be made.
 *
 * @param operations   numbered from 1
 * @param overrunMm    how far any hit reaches beyond the part's outer contour: the least web this part needs around it
 * @param findings     refusals (errors), warnings, notes
 */
public record OperationList(List<Operation> operations, double overrunMm, List<Finding> findings) {

    public OperationList {
        operations = List.copyOf(operations);
        findings = List.copyOf(findings);
    }

    /** Whether every feature is made. */
    public boolean complete() {
        return findings.stream().noneMatch(Finding::isError);
    }
}
