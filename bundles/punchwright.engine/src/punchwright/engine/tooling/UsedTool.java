// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

/**
 * A tool that a plan needs on the machine.
 *
 * @param tool       which tool
 * @param anglesDeg  angles needed on the sheet, degrees, in any order
 * @param hits       hits on the sheet
 * @param forceN     largest punching force of a hit, without reserve
 */
public record UsedTool(Tool tool, List<Double> anglesDeg, int hits, double forceN) {

    public UsedTool {
        anglesDeg = List.copyOf(anglesDeg);
    }
}
