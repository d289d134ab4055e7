// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

/**
 * The choice of tools with what it was chosen from.
 *
 * @param operations   the choice
 * @param ways         per feature, in order
 * @param costSeconds  what was made least: time, wear, web and tool changes of the part, in seconds of the machine
 * @param boundSeconds no choice among the candidates costs less than this; equal to the cost when proven best
 */
public record ToolWeighing(OperationList operations, List<FeatureWays> ways, double costSeconds, double boundSeconds) {

    public ToolWeighing {
        ways = List.copyOf(ways);
    }
}
