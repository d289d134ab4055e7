// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/**
 * What makes one choice of tools dearer than another, all turned into seconds of the machine.
 *
 * @param ratePerHour          machine-hour rate that turns the wear of a tool into seconds
 * @param partsPerChange       parts that share one tool change
 * @param approachMm           travel to the first hit of an operation
 * @param reachSecondsPerMm    cost of each mm that hits reach beyond the part: a wider web
 * @param sliverSeconds        cost of each loose sliver, which may jam
 */
public record ChoiceWeights(double ratePerHour, double partsPerChange, double approachMm, double reachSecondsPerMm,
        double sliverSeconds) {

    /** Estimates, common practice, no source. */
    public static final ChoiceWeights USUAL = new ChoiceWeights(70, 10, 80, 0.2, 5);
}
