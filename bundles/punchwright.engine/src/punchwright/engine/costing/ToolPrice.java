// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

/**
 * What the wear of a tool is worked out from.
 *
 * @param toolId        stable id
 * @param label         what a person reads
 * @param price         price of the tool with the grinds that {@code grinds} counts, money
 * @param residualValue what the used-up tool brings, money
 * @param grinds        grinds it stands, 0 or more
 * @param grindCost     cost of one grind, money
 * @param hitsPerGrind  hits between two grinds in this material group; 0 when not known (wear is then not costed: a finding)
 */
public record ToolPrice(String toolId, String label, double price, double residualValue, int grinds, double grindCost,
        double hitsPerGrind) {
}
