// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

/**
 * Inputs of the machine-hour rate; money in the library's currency.
 *
 * @param name                    what the shop calls the machine
 * @param purchaseValue           what it cost, 0 or more
 * @param replacementValue        what the same would cost today, 0 or more
 * @param residualValue           what it brings at the end; below 0 when scrapping costs money
 * @param lifeYears               years of use, above 0
 * @param hoursPerYear            planned hours in a year, above 0
 * @param occupancyPercent        part of the planned hours in which it runs, above 0 to 100
 * @param interestRatePercent     imputed interest in a year
 * @param interestBasis           half of which value bears the interest
 * @param spaceM2                 floor space, m2
 * @param spaceRatePerM2Year      money per m2 and year
 * @param powerKw                 connected power, kW
 * @param loadFactorPercent       mean part of it while running
 * @param energyPricePerKwh       money per kWh
 * @param maintenanceSharePercent maintenance in a year, per cent of the replacement value
 * @param otherPerHour            anything else by the hour, as tools that are not costed by the hit
 * @param operatorSharePercent    part of the running time in which an operator attends; 200 for two operators
 */
public record MachineRateInputs(String name, double purchaseValue, double replacementValue, double residualValue,
        double lifeYears, double hoursPerYear, double occupancyPercent, double interestRatePercent, InterestBasis interestBasis,
        double spaceM2, double spaceRatePerM2Year, double powerKw, double loadFactorPercent, double energyPricePerKwh,
        double maintenanceSharePercent, double otherPerHour, double operatorSharePercent) {

    /** Half of which value bears the imputed interest; teaching pages on VDI 3258 differ, so it is a setting. */
    public enum InterestBasis {
        PURCHASE, REPLACEMENT
    }
}
