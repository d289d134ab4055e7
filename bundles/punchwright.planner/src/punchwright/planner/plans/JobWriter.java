// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.LinkedHashMap;
import java.util.Map;

import punchwright.engine.feature.Feature;
import punchwright.engine.planning.PartPlan;
import punchwright.engine.planning.SheetRun;
import punchwright.model.plan.Operation;
import punchwright.model.plan.OperationKind;
import punchwright.model.plan.PlanFactory;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.TimeCause;
import punchwright.model.plan.TimeShare;
import punchwright.model.plan.ToolUse;
import punchwright.model.shop.Library;
import punchwright.model.shop.Material;
import punchwright.model.shop.Rates;
import punchwright.planner.convert.Texts;

/** Writes one sheet job: tool uses, operations, layouts. */
final class JobWriter {

    private static final double N_PER_KN = 1000;

    private final PlanWriter.Origin origin;
    private final String id;
    private final Map<Integer, ToolUse> uses = new LinkedHashMap<>();
    private final Map<String, Operation> operations = new LinkedHashMap<>();

    JobWriter(PlanWriter.Origin origin, String id) {
        this.origin = origin;
        this.id = id;
    }

    SheetJob write(punchwright.engine.planning.SheetJob job) {
        SheetJob out = PlanFactory.eINSTANCE.createSheetJob();
        out.setId(id);
        out.setMaterial(material(job.material().id()));
        out.setThicknessMm(job.thicknessMm());
        job.loading().uses().forEach(u -> out.getToolUses().add(use(u)));
        PieceTimes times = new PieceTimes(job);
        for (PartPlan part : job.parts()) {
            for (punchwright.engine.tooling.Operation op : part.operations().operations()) {
                Operation operation = operation(part, op);
                operation.setTimeSPerPart(times.secondsPerPiece(part.demand().id(), op.number()));
                out.getOperations().add(operation);
            }
        }
        int number = 1;
        for (SheetRun run : job.runs()) {
            out.getLayouts().add(new LayoutWriter(origin, id, uses, operations).write(run, number++, job));
        }
        new UseFigures(job, uses).fill();
        addSetUp(job, out);
        return out;
    }

    /** Set-up as the costing counts it: a base, and time for each tool that does not stand in the machine already. */
    private void addSetUp(punchwright.engine.planning.SheetJob job, SheetJob out) {
        Rates rates = origin.library().getRates();
        if (rates == null || job.runs().isEmpty()) {
            return;
        }
        int tools = SheetWorkInput.toolsToLoad(origin, job);
        TimeShare setUp = PlanFactory.eINSTANCE.createTimeShare();
        setUp.setCause(TimeCause.SET_UP);
        setUp.setSeconds(60 * (rates.getSetUpBaseMinutes() + tools * rates.getSetUpMinutesPerTool()));
        setUp.setCount(tools);
        out.getSetUp().add(setUp);
    }

    private Material material(String materialId) {
        return origin.library().getMaterials().stream().filter(m -> m.getId().equals(materialId)).findFirst().orElse(null);
    }

    private ToolUse use(punchwright.engine.tooling.ToolUse u) {
        Library library = origin.library();
        ToolUse out = PlanFactory.eINSTANCE.createToolUse();
        out.setId(id + "-T" + u.number());
        out.setBalloon(u.number());
        out.setTool(library.getTools().stream().filter(t -> t.getId().equals(u.tool().id())).findFirst().orElse(null));
        if (u.place() != null) {
            out.setPlace(origin.machine().getPlaces().stream().filter(p -> p.getId().equals(u.place().id())).findFirst()
                    .orElse(null));
        }
        if (u.holder() != null) {
            out.setHolder(library.getHolders().stream().filter(h -> h.getId().equals(u.holder().id())).findFirst()
                    .orElse(null));
            out.setInsertPosition(u.insert());
        }
        out.setAngleDeg(u.setAngleDeg());
        out.setForceLimitKn(limitN(u) / N_PER_KN);
        uses.put(u.number(), out);
        return out;
    }

    private double limitN(punchwright.engine.tooling.ToolUse u) {
        double press = origin.machine().getPressForceKn() * N_PER_KN;
        double place = u.place() == null ? press : Math.min(press, u.place().forceLimitN());
        return u.holder() == null ? place : Math.min(place, u.holder().forceLimitN());
    }

    private Operation operation(PartPlan part, punchwright.engine.tooling.Operation op) {
        Feature f = op.feature();
        Operation out = PlanFactory.eINSTANCE.createOperation();
        out.setId(id + "-" + part.demand().id() + "-O" + op.number());
        out.setNumber(op.number());
        out.setPart(origin.parts().get(part.demand().id()));
        out.setFeatureId("F" + f.number());
        out.setFeatureKind(f.kind().name());
        out.setDescription(Texts.describe(f));
        out.setXMm(f.center().x());
        out.setYMm(f.center().y());
        out.setLengthMm(f.lengthMm());
        out.setWidthMm(f.widthMm());
        out.setAngleDeg(f.angleDeg());
        out.setKind(OperationKind.getByName(op.kind().name()));
        out.setHitsPerPart(op.hits().size());
        out.setPitchMm(op.hits().size() < 2 ? 0 : op.hits().get(0).at().distance(op.hits().get(1).at()));
        out.setForceKn(op.forceN() / N_PER_KN);
        out.setStrippingKn(op.strippingN() / N_PER_KN);
        out.setClearanceMm(op.clearanceMm());
        out.setReason(op.why());
        uses.values().stream().filter(u -> u.getTool() != null && u.getTool().getId().equals(op.tool().id())).findFirst()
                .ifPresent(out::setToolUse);
        operations.put(part.demand().id() + "|" + op.number(), out);
        return out;
    }
}
