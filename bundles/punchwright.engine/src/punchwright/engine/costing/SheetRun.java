// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

/**
 * One layout, run a number of times.
 *
 * @param stockId       stable id of the stock item
 * @param label         what a person reads, as "2500 x 1250 x 2"
 * @param pricePerSheet money
 * @param massKg        mass of a sheet
 * @param cycleS        time of one run with loading and unloading, s
 * @param runs          how often, 1 or more
 * @param remnantMassKg mass of the remnants kept of one sheet, kg, 0 or more
 */
public record SheetRun(String stockId, String label, double pricePerSheet, double massKg, double cycleS, int runs,
        double remnantMassKg) {
}
