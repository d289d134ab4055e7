// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.press.Material;

/**
 * The layouts of one material and thickness without a plan.
 *
 * @param material    sheet material
 * @param thicknessMm sheet thickness
 * @param job         what the layout stage was asked, with webs, margins and costs; null where the machine or stock refuses
 * @param websMm      webs that planning tries, the least first
 * @param nesting     the layouts; each piece under the id of its part
 * @param findings    everything noticed
 */
public record SheetLayouts(Material material, double thicknessMm, NestingJob job, List<Double> websMm, Nesting nesting,
        List<Finding> findings) {

    public SheetLayouts {
        websMm = List.copyOf(websMm);
        findings = List.copyOf(findings);
    }
}
