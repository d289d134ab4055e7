// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Proven, or the findings that refuse it.
 *
 * @param proven       whether no error was found
 * @param checks       names of the checks made, in order
 * @param worstEdgeMm  largest deviation of a made edge outside micro-joints
 * @param findings     first failures with their places
 */
public record ProofResult(boolean proven, List<String> checks, double worstEdgeMm, List<Finding> findings) {

    public ProofResult {
        checks = List.copyOf(checks);
        findings = List.copyOf(findings);
    }
}
