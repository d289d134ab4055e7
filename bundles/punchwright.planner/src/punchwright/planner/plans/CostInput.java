// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

import punchwright.engine.costing.CostJob;
import punchwright.engine.costing.CostLine;
import punchwright.engine.costing.CostPart;
import punchwright.engine.costing.MachineRateInputs;
import punchwright.engine.costing.MachineRateInputs.InterestBasis;
import punchwright.engine.costing.SecondaryOperation;
import punchwright.engine.costing.ShopRates;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.planning.EnginePlan;
import punchwright.engine.planning.PartPlan;
import punchwright.engine.planning.SheetJob;
import punchwright.engine.tooling.Operation;
import punchwright.model.shop.Machine;
import punchwright.model.shop.MachineRate;
import punchwright.model.shop.Rates;
import punchwright.model.work.Part;
import punchwright.model.work.SecondaryWork;

/** What the cost of a plan depends on, gathered from the engine's plan and from what the engineer keeps. */
final class CostInput {

    private final PlanWriter.Origin origin;
    private final EnginePlan plan;

    CostInput(PlanWriter.Origin origin, EnginePlan plan) {
        this.origin = origin;
        this.plan = plan;
    }

    CostJob job() {
        List<CostPart> parts = new ArrayList<>();
        List<punchwright.engine.costing.SheetWork> works = new ArrayList<>();
        for (SheetJob job : plan.jobs()) {
            PieceTimes times = new PieceTimes(job);
            job.parts().stream().filter(p -> times.pieces(p.demand().id()) > 0)
                    .forEach(p -> parts.add(part(p, job, works.size(), times)));
            works.add(new SheetWorkInput(origin, job).work());
        }
        return new CostJob(origin.order().getNumber() + " / " + origin.machine().getName(), origin.library().getCurrency(),
                Locale.ENGLISH, code(origin.machine()), machine(), rates(), works, parts,
                lines());
    }

    /** Letters and digits that set this machine's cost cells apart from another machine's. */
    static String code(Machine machine) {
        return machine.getId().replaceAll("[^A-Za-z0-9]", "");
    }

    private MachineRateInputs machine() {
        return rate(origin.machine());
    }

    /** Inputs of the machine-hour rate. */
    static MachineRateInputs rate(Machine machine) {
        MachineRate r = machine.getRate();
        return new MachineRateInputs(machine.getName(), r.getPurchaseValue(), r.getReplacementValue(),
                r.getResidualValue(), r.getLifeYears(), r.getHoursPerYear(), r.getOccupancyPercent(), r.getInterestRatePercent(),
                InterestBasis.PURCHASE, r.getSpaceM2(), r.getSpaceRatePerM2Year(), r.getPowerKw(), r.getLoadFactorPercent(),
                r.getEnergyPricePerKwh(), r.getMaintenanceSharePercent(), 0, r.getOperatorSharePercent());
    }

    private ShopRates rates() {
        Rates r = origin.library().getRates();
        return new ShopRates(r.getLabourPerHour(), r.getSetUpPerHour(), r.getProgrammingPerHour(), r.getSetUpBaseMinutes(),
                r.getSetUpMinutesPerTool(), r.getProgrammingMinutes(), 1, r.getFirstPieceCheckMinutes(),
                r.getConsumablesPerHour(), r.getRemnantValuePercent(), r.getScrapRatePercent(), r.getMaterialSurchargePercent(),
                r.getProductionSurchargePercent(), r.getAdminSurchargePercent(), r.getSalesSurchargePercent(),
                r.getProfitPercent());
    }

    private CostPart part(PartPlan p, SheetJob job, int work, PieceTimes times) {
        Part part = origin.parts().get(p.demand().id());
        Map<String, Integer> hits = new LinkedHashMap<>();
        for (Operation op : p.operations().operations()) {
            hits.merge(op.tool().id(), op.hits().size(), Integer::sum);
        }
        Bounds b = p.demand().shape().bounds();
        double area = (b.width() + job.webMm()) * (b.height() + job.webMm());
        double massKg = p.demand().shape().areaMm2() * job.thicknessMm() * job.material().densityKgPerDm3() * 1e-6;
        return new CostPart(part.getId(), part.getNumber() + " " + part.getName(), work, times.pieces(part.getId()), massKg,
                area, times.secondsPerPiece(part.getId()), hits, origin.library().getRates().getProgrammingMinutes(),
                part.getSecondary().stream().map(CostInput::secondary).toList());
    }

    private static SecondaryOperation secondary(SecondaryWork work) {
        double minutes = work.getMinutesPerPiece() > 0 ? work.getMinutesPerPiece()
                : work.getRate().getMinutesPerPiece() + work.getUnits() * work.getRate().getMinutesPerUnit();
        return new SecondaryOperation(work.getRate().getId(), work.getRate().getName(), work.getRate().getPerHour(),
                work.getRate().getSetUpMinutes(), minutes);
    }

    private List<CostLine> lines() {
        Set<String> planned = plan.jobs().stream().flatMap(j -> j.parts().stream()).map(p -> p.demand().id())
                .collect(Collectors.toSet());
        return MadeLines.of(origin.order(), plan).entrySet().stream()
                .map(made -> new LineInput(made.getKey()).costLine(made.getValue(), planned)).toList();
    }
}
