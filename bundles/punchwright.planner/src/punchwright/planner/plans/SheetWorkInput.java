// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.costing.SheetRun;
import punchwright.engine.costing.SheetWork;
import punchwright.engine.costing.ToolPrice;
import punchwright.engine.nesting.Remnant;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.planning.SheetJob;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolUse;
import punchwright.model.shop.Material;
import punchwright.model.shop.Standing;
import punchwright.planner.convert.Texts;

/** The sheets, set-up and tools of one sheet job as the costing wants them. */
final class SheetWorkInput {

    private final PlanWriter.Origin origin;
    private final SheetJob job;

    SheetWorkInput(PlanWriter.Origin origin, SheetJob job) {
        this.origin = origin;
        this.job = job;
    }

    SheetWork work() {
        Material material = origin.library().getMaterials().stream().filter(m -> m.getId().equals(job.material().id()))
                .findFirst().orElseThrow();
        return new SheetWork(job.material().grade() + ", " + Texts.number(job.thicknessMm()) + " mm", material.getId(),
                material.getScrapValuePerKg(), material.getLifeFactor(), toolsToLoad(origin, job), runs(), prices());
    }

    /** Tools of the job that do not stand in the machine between orders. */
    static int toolsToLoad(PlanWriter.Origin origin, SheetJob job) {
        int load = 0;
        for (ToolUse use : job.loading().uses()) {
            load += origin.machine().getStanding().stream().noneMatch(s -> stands(s, use)) ? 1 : 0;
        }
        return load;
    }

    private static boolean stands(Standing s, ToolUse use) {
        return use.place() != null && s.getTool() != null && s.getTool().getId().equals(use.tool().id())
                && s.getPlace().getId().equals(use.place().id());
    }

    private List<SheetRun> runs() {
        List<SheetRun> runs = new ArrayList<>();
        double kgPerMm2 = job.thicknessMm() * job.material().densityKgPerDm3() * 1e-6;
        for (int i = 0; i < job.runs().size(); i++) {
            int layout = i;
            punchwright.engine.planning.SheetRun run = job.runs().get(i);
            SheetOffer sheet = run.layout().sheet();
            double massKg = sheet.areaMm2() * kgPerMm2;
            double remnantKg = kgPerMm2 * job.nesting().remnants().stream().filter(r -> r.layout() == layout)
                    .mapToDouble(Remnant::areaMm2).sum();
            String label = Texts.number(sheet.lengthMm()) + " \u00d7 " + Texts.number(sheet.widthMm()) + " \u00d7 "
                    + Texts.number(job.thicknessMm());
            runs.add(new SheetRun(sheet.id(), label, sheet.price(), massKg, run.timeline().totalS(), run.layout().runs(),
                    remnantKg));
        }
        return runs;
    }

    private List<ToolPrice> prices() {
        Map<String, ToolPrice> prices = new LinkedHashMap<>();
        for (ToolUse use : job.loading().uses()) {
            Tool t = use.tool();
            prices.putIfAbsent(t.id(), new ToolPrice(t.id(), t.name(), t.price(), residual(t), t.grindsLeft(), t.grindCost(),
                    t.hitsPerGrind().getOrDefault(job.material().group(), 0)));
        }
        return List.copyOf(prices.values());
    }

    private double residual(Tool tool) {
        return origin.library().getTools().stream().filter(t -> t.getId().equals(tool.id())).findFirst()
                .map(punchwright.model.shop.Tool::getResidualValue).orElse(0.0);
    }
}
