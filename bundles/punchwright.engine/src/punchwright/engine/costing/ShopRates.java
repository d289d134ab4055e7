// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

/**
 * Rates of labour, set-up and overhead of the shop.
 *
 * @param labourPerHour              operator, money per hour
 * @param setUpPerHour               setter, money per hour; 0 means as labour
 * @param programmingPerHour         programmer, money per hour
 * @param setUpBaseMinutes           set-up of any material and thickness before tools, min
 * @param setUpMinutesPerTool        for each tool that does not stand in the machine, min
 * @param programmingMinutes         programming of a new part, min
 * @param programmingLots            lots over which programming is spread, 1 or more; 1 puts it all on this lot
 * @param firstPieceCheckMinutes     check of the first piece of each part, min
 * @param consumablesPerHour         lubricant and the like, money per running hour
 * @param remnantCreditPercent       part of the sheet price that a remnant keeps, per cent of its price by mass
 * @param scrapRatePercent           pieces lost, per cent of good pieces
 * @param materialSurchargePercent   material overhead on direct material
 * @param productionSurchargePercent residual production overhead on direct labour
 * @param adminSurchargePercent      administration overhead on production cost
 * @param salesSurchargePercent      sales overhead on production cost
 * @param profitPercent              profit on total cost
 */
public record ShopRates(double labourPerHour, double setUpPerHour, double programmingPerHour, double setUpBaseMinutes,
        double setUpMinutesPerTool, double programmingMinutes, double programmingLots, double firstPieceCheckMinutes,
        double consumablesPerHour, double remnantCreditPercent, double scrapRatePercent, double materialSurchargePercent,
        double productionSurchargePercent, double adminSurchargePercent, double salesSurchargePercent, double profitPercent) {
}
