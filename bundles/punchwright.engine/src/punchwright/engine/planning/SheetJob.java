// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.press.Material;
import punchwright.engine.tooling.Loading;

/**
 * All sheets of one material and thickness.
 *
 * @param material     sheet material
 * @param thicknessMm  sheet thickness
 * @param parts        parts made from it
 * @param nesting      layouts
 * @param loading      tools in their places
 * @param runs         one for each layout
 * @param webMm        web between neighbours
 * @param sharedCuts   whether neighbours share the cut between them
 * @param findings     everything noticed by any stage
 */
public record SheetJob(Material material, double thicknessMm, List<PartPlan> parts, Nesting nesting, Loading loading,
        List<SheetRun> runs, double webMm, boolean sharedCuts, List<Finding> findings) {

    public SheetJob {
        parts = List.copyOf(parts);
        runs = List.copyOf(runs);
        findings = List.copyOf(findings);
    }

    /** Number of errors among the findings. */
    public long errors() {
        return findings.stream().filter(Finding::isError).count();
    }
}
