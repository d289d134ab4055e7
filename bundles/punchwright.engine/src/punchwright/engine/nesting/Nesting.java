// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.List;

import punchwright.engine.finding.Finding;

/**
 * Layouts for a job.
 *
 * @param layouts     in order of the run
 * @param remnants    large enough to keep, in the order of the layouts
 * @param utilisation part area over sheet area, 0 to 1
 * @param cost        what they cost
 * @param boundMm2    lower bound on the sheet area needed for the parts that must be made
 * @param boundCost   lower bound on the total cost of any layouts that hold the parts that must be made
 * @param findings    refusals, warnings, notes
 */
public record Nesting(List<Layout> layouts, List<Remnant> remnants, double utilisation, NestingCost cost, double boundMm2,
        double boundCost, List<Finding> findings) {

    public Nesting {
        layouts = List.copyOf(layouts);
        remnants = List.copyOf(remnants);
        findings = List.copyOf(findings);
    }

    /** Layouts whose cost nobody asks for. */
    public Nesting(List<Layout> layouts, double utilisation, double boundMm2, List<Finding> findings) {
        this(layouts, List.of(), utilisation, NestingCost.NONE, boundMm2, 0, findings);
    }

    /** Area of all sheets, mm2. */
    public double sheetMm2() {
        return layouts.stream().mapToDouble(l -> l.runs() * l.sheet().areaMm2()).sum();
    }

    /** How far the sheet area is above the bound, as a share of it; 0 without a bound. */
    public double areaGap() {
        return gap(sheetMm2(), boundMm2);
    }

    /** How far the total cost is above the bound, as a share of it; 0 without a bound above 0. */
    public double costGap() {
        return gap(cost.total(), boundCost);
    }

    private static double gap(double value, double bound) {
        return bound > 0 ? Math.max(0, value / bound - 1) : 0;
    }
}
