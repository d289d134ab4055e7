// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

import punchwright.engine.feature.FeatureSet;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;

/**
 * Input of the choice of tools for one part.
 *
 * @param features     what must be made
 * @param material     sheet material
 * @param thicknessMm  sheet thickness
 * @param machine      press
 * @param tools        tools owned
 * @param holders      multi-tool holders owned
 * @param rules        shop rules
 */
public record ToolingJob(FeatureSet features, Material material, double thicknessMm, Machine machine, List<Tool> tools,
        List<Holder> holders, ToolingRules rules) {

    public ToolingJob {
        tools = List.copyOf(tools);
        holders = List.copyOf(holders);
    }
}
