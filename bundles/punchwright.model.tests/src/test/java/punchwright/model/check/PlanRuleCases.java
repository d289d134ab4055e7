// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.List;

import punchwright.model.Samples;
import punchwright.model.plan.CostItem;
import punchwright.model.plan.LotCost;
import punchwright.model.plan.PlanStatus;
import punchwright.model.plan.TimeShare;
import punchwright.model.plan.ToolUse;

/** The cases of the rules on plans and their costs; see {@link RuleCases}. */
final class PlanRuleCases {

    private PlanRuleCases() {
    }

    static void add() {
        plans();
        costs();
    }

    private static void plans() {
        RuleCases.rule("140", (w, bad) -> w.plan.setLibraryRevision(bad ? 7 : 1));
        RuleCases.rule("141", (w, bad) -> w.use().setForceKn(bad ? 220.1 : 220));
        RuleCases.rule("142", (w, bad) -> {
            ToolUse second = Samples.PLAN.createToolUse();
            second.setId("use-2");
            second.setTool(w.tool());
            second.setBalloon(bad ? 1 : 2);
            w.plan.getJobs().get(0).getToolUses().add(second);
        });
        RuleCases.rule("143", (w, bad) -> w.use().setLifeSharePercent(bad ? 101 : 100));
        RuleCases.rule("144", (w, bad) -> w.layout().getHits().get(2).setXMm(bad ? 2501 : 2499));
        RuleCases.rule("145", (w, bad) -> w.layout().getHoldings().get(0).getClampPositionsMm().add(bad ? 900.0 : 2100.0));
        RuleCases.rule("146", (w, bad) -> w.layout().getHits().get(3).setStartS(bad ? 0.3 : 0.5));
        RuleCases.rule("147", (w, bad) -> {
            w.plan.setStatus(PlanStatus.PLANNED);
            w.layout().setRunCount(bad ? 49 : 50);
        });
        RuleCases.rule("148", (w, bad) -> {
            TimeShare share = Samples.PLAN.createTimeShare();
            share.setSeconds(90);
            w.layout().getTimes().add(share);
            w.layout().setCycleTimeS(bad ? 91 : 90);
        });
    }

    private static void costs() {
        RuleCases.rule("150", (w, bad) -> lot(w).getRoot().setKey(bad ? "AB12" : "cost_total"));
        RuleCases.rule("151", (w, bad) -> lot(w).getRoot().getChildren().get(0).setKey(bad ? "total" : "material"));
        RuleCases.rule("152", (w, bad) -> lot(w).setPerPiece(bad ? 2.1 : 2));
        RuleCases.rule("153", (w, bad) -> lot(w).getRoot().getInputs().addAll(bad ? List.of("labour") : List.of("material")));
        RuleCases.rule("154", (w, bad) -> {
            figure(w, "hours");
            figure(w, "labour", bad ? "rate" : "hours");
            figure(w, "rate");
        });
    }

    private static CostItem figure(World w, String key, String... inputs) {
        CostItem figure = Samples.PLAN.createCostItem();
        figure.setKey(key);
        figure.getInputs().addAll(List.of(inputs));
        w.plan.getFigures().add(figure);
        return figure;
    }

    private static LotCost lot(World w) {
        LotCost lot = Samples.PLAN.createLotCost();
        lot.setId("lot-50");
        lot.setLine(w.order.getLines().get(0));
        lot.setQuantity(50);
        lot.setPerPiece(2);
        lot.setTotal(100);
        CostItem total = Samples.PLAN.createCostItem();
        total.setKey("total");
        CostItem material = Samples.PLAN.createCostItem();
        material.setKey("material");
        total.getChildren().add(material);
        lot.setRoot(total);
        w.plan.getCosts().add(lot);
        return lot;
    }
}
