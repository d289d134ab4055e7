// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.List;
import java.util.Map;

import punchwright.engine.costing.CostCell;
import punchwright.engine.costing.CostJob;
import punchwright.engine.costing.CostSheet;
import punchwright.engine.costing.Expression;
import punchwright.model.plan.CostItem;
import punchwright.model.plan.CostKind;
import punchwright.model.plan.LotCost;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanFactory;
import punchwright.model.work.OrderLine;

/**
 * Puts a cost calculation of the engine into a plan: every figure once in {@link Plan#getFigures()}, and for each order line one
 * {@link LotCost} with its cost kinds and one for each other lot. Earlier costs of the plan are replaced.
 */
final class CostFigures {

    private static final Map<punchwright.engine.costing.CostKind, CostKind> KINDS = Map.ofEntries(
            Map.entry(punchwright.engine.costing.CostKind.MATERIAL, CostKind.MATERIAL),
            Map.entry(punchwright.engine.costing.CostKind.PURCHASED, CostKind.PURCHASED),
            Map.entry(punchwright.engine.costing.CostKind.MACHINE, CostKind.MACHINE),
            Map.entry(punchwright.engine.costing.CostKind.LABOUR, CostKind.LABOUR),
            Map.entry(punchwright.engine.costing.CostKind.SET_UP, CostKind.SET_UP),
            Map.entry(punchwright.engine.costing.CostKind.TOOL_WEAR, CostKind.TOOL),
            Map.entry(punchwright.engine.costing.CostKind.CONSUMABLES, CostKind.CONSUMABLE),
            Map.entry(punchwright.engine.costing.CostKind.SECONDARY, CostKind.SECONDARY),
            Map.entry(punchwright.engine.costing.CostKind.OVERHEADS, CostKind.OVERHEAD),
            Map.entry(punchwright.engine.costing.CostKind.TOTAL, CostKind.TOTAL),
            Map.entry(punchwright.engine.costing.CostKind.PROFIT, CostKind.PROFIT));

    private CostFigures() {
    }

    /**
     * Stores the calculation.
     *
     * @param plan  what the calculation belongs to
     * @param job   its input
     * @param sheet its result
     * @param lines the order lines, in the order of {@code job.lines()}
     */
    static void store(Plan plan, CostJob job, CostSheet sheet, List<OrderLine> lines) {
        plan.getFigures().clear();
        plan.getCosts().clear();
        sheet.cells().forEach(cell -> plan.getFigures().add(item(cell, cell.group())));
        for (int i = 0; i < lines.size(); i++) {
            plan.getCosts().add(lot(job, sheet, lines.get(i), i + 1));
            List<Integer> lots = job.lines().get(i).lots();
            for (int lot = 1; lot <= lots.size(); lot++) {
                plan.getCosts().add(otherLot(job, sheet, lines.get(i), i + 1, lot, lots.get(lot - 1)));
            }
        }
        plan.setTotalCost(sheet.value(punchwright.engine.costing.CostKind.TOTAL.orderCell(job.code())));
    }

    private static LotCost lot(CostJob job, CostSheet sheet, OrderLine line, int number) {
        LotCost cost = PlanFactory.eINSTANCE.createLotCost();
        cost.setId("cost-" + number);
        cost.setLine(line);
        cost.setQuantity(job.lines().get(number - 1).quantity());
        cost.setTotal(sheet.value(punchwright.engine.costing.CostKind.TOTAL.lotCell(job.code(), number)));
        cost.setPerPiece(sheet.value(punchwright.engine.costing.CostKind.TOTAL.pieceCell(job.code(), number)));
        CostItem root = kind(job, sheet, number, punchwright.engine.costing.CostKind.TOTAL);
        for (punchwright.engine.costing.CostKind kind : punchwright.engine.costing.CostKind.parts()) {
            root.getChildren().add(kind(job, sheet, number, kind));
        }
        cost.setRoot(root);
        return cost;
    }

    private static CostItem kind(CostJob job, CostSheet sheet, int line, punchwright.engine.costing.CostKind kind) {
        CostItem item = item(sheet.cell(kind.lotCell(job.code(), line)).orElseThrow(), "");
        item.setKind(KINDS.get(kind));
        return item;
    }

    private static LotCost otherLot(CostJob job, CostSheet sheet, OrderLine line, int number, int lot, int quantity) {
        String stem = (job.code().isEmpty() ? "" : job.code() + "_") + "M_L" + number + "_lot" + lot;
        LotCost cost = PlanFactory.eINSTANCE.createLotCost();
        cost.setId("cost-" + number + "-lot-" + lot);
        cost.setLine(line);
        cost.setQuantity(quantity);
        cost.setTotal(sheet.value(stem + "_total"));
        cost.setPerPiece(sheet.value(stem + "_piece"));
        CostItem root = item(sheet.cell(stem + "_total").orElseThrow(), "");
        root.setKind(CostKind.TOTAL);
        cost.setRoot(root);
        return cost;
    }

    private static CostItem item(CostCell cell, String heading) {
        CostItem item = PlanFactory.eINSTANCE.createCostItem();
        item.setKey(cell.name());
        item.setLabel(cell.label());
        item.setHeading(heading);
        item.setUnit(cell.unit());
        item.setValue(cell.value());
        item.setSource(cell.source());
        if (cell.formula() instanceof Expression formula) {
            item.setFormula(formula.text());
            item.getInputs().addAll(formula.references());
        }
        return item;
    }
}
