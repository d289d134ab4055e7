// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Layouts for a job.
 *
 * @param layouts       in order of the run
 * @param utilisation   part area over sheet area, 0 to 1
 * @param boundMm2      lower bound on the sheet area needed
 * @param findings      refusals, warnings, notes
 */
public record Nesting(List<Layout> layouts, double utilisation, double boundMm2, List<Finding> findings) {

    public Nesting {
        layouts = List.copyOf(layouts);
        findings = List.copyOf(findings);
    }
}
