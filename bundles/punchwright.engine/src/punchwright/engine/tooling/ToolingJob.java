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
 * @param elsewhere    other machines and materials of the shop, for the nearest way out
 */
public record ToolingJob(FeatureSet features, Material material, double thicknessMm, Machine machine, List<Tool> tools,
        List<Holder> holders, ToolingRules rules, Elsewhere elsewhere) {

    public ToolingJob {
        tools = List.copyOf(tools);
        holders = List.copyOf(holders);
    }

    /** Nothing is known of the rest of the shop; refusals have no ways out with values. */
    public ToolingJob(FeatureSet features, Material material, double thicknessMm, Machine machine, List<Tool> tools,
            List<Holder> holders, ToolingRules rules) {
        this(features, material, thicknessMm, machine, tools, holders, rules, Elsewhere.NOTHING);
    }

    ToolingJob in(Material other) {
        return new ToolingJob(features, other, thicknessMm, machine, tools, holders, rules, elsewhere);
    }

    ToolingJob at(double otherThicknessMm) {
        return new ToolingJob(features, material, otherThicknessMm, machine, tools, holders, rules, elsewhere);
    }

    ToolingJob on(Machine other) {
        return new ToolingJob(features, material, thicknessMm, other, tools, holders, rules, elsewhere);
    }

    ToolingJob with(Tool only) {
        return new ToolingJob(features, material, thicknessMm, machine, List.of(only), holders, rules, elsewhere);
    }

    ToolingJob of(FeatureSet other) {
        return new ToolingJob(other, material, thicknessMm, machine, tools, holders, rules, elsewhere);
    }

    /** Whether the machine takes the sheet's thickness. */
    boolean thicknessFits() {
        return thicknessMm >= machine.minThicknessMm() - 1e-9 && thicknessMm <= machine.maxThicknessMm() + 1e-9;
    }
}
