// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;

import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.Finding;
import punchwright.engine.planning.PartDemand;
import punchwright.engine.planning.PartFeatures;
import punchwright.engine.planning.PlanningRules;
import punchwright.engine.planning.Progress;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.Loading;
import punchwright.engine.tooling.Operation;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolChoice;
import punchwright.engine.tooling.ToolLoading;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.engine.tooling.ToolWishes;
import punchwright.engine.tooling.ToolingJob;
import punchwright.engine.tooling.UsedTool;
import punchwright.model.files.WorkspacePaths;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.work.Part;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.MachineReader;
import punchwright.planner.convert.PartReader;
import punchwright.planner.convert.ShopLayerRules;
import punchwright.planner.convert.ToolReader;

/** Weighs the tools for one part on one machine, with the same input and weights that planning uses. */
public final class PartTooling {

    private final Library library;
    private final DrawingStore drawings;

    public PartTooling(Library library, WorkspacePaths paths) {
        this.library = library;
        this.drawings = new DrawingStore(paths, ShopLayerRules.of(library));
    }

    /** The choice for a part on a machine, without and with its wishes; see the longer form. */
    public PartWeighing weigh(Part part, Machine machine, Progress progress) {
        return weigh(part, machine, null, progress);
    }

    /**
     * The choice for a part on a machine, without and with its wishes. Reads the model, changes nothing in it.
     *
     * @param before   what was weighed before, whose choice without wishes is taken over when all but the wishes is the same; may
     *                 be null
     * @param progress asked between the choices whether to go on
     * @throws punchwright.planner.convert.InputException when the part has no shape or material, or its drawing cannot be read
     * @throws punchwright.engine.planning.CancelledException when the person cancels
     */
    public PartWeighing weigh(Part part, Machine machine, PartWeighing before, Progress progress) {
        return weigh(part, machine, before, (features, free) -> ToolWishes.NONE, progress);
    }

    /**
     * The same with more wishes than the part keeps, told when its features and the choice without wishes are known.
     *
     * @param more further wishes; a pin of a feature takes the place of the part's own
     */
    public PartWeighing weigh(Part part, Machine machine, PartWeighing before,
            BiFunction<FeatureSet, ToolWeighing, ToolWishes> more, Progress progress) {
        List<Finding> findings = new ArrayList<>();
        PartReader reader = new PartReader(drawings);
        PartDemand demand = reader.demand(part, 1);
        findings.addAll(reader.findings(part));
        FeatureSet features = PartFeatures.of(demand);
        findings.addAll(features.findings());
        ToolingJob job = new ToolingJob(features, demand.material(), demand.thicknessMm(), MachineReader.read(machine),
                LibraryTools.read(library, drawings, findings), ToolReader.usableHolders(library.getHolders()),
                PlanningRules.USUAL.tooling(), LibraryTools.elsewhere(library));
        progress.check();
        ToolWeighing free = before != null && before.job().equals(job) ? before.free()
                : ToolChoice.weigh(job, ChoiceWeights.USUAL, ToolWishes.NONE);
        progress.check();
        ToolWishes wishes = both(demand.wishes().on(features), more.apply(features, free));
        ToolWeighing wished = wishes.equals(ToolWishes.NONE) ? free : ToolChoice.weigh(job, ChoiceWeights.USUAL, wishes);
        findings.addAll(wished.operations().findings());
        Loading loading = ToolLoading.load(job.machine(), used(wished.operations().operations()), job.holders(),
                job.rules().forceReserve());
        return new PartWeighing(job, demand.wishes(), ChoiceWeights.USUAL, free, wished, loading, findings);
    }

    private static ToolWishes both(ToolWishes own, ToolWishes more) {
        Set<String> forbidden = new TreeSet<>(own.forbidden());
        forbidden.addAll(more.forbidden());
        Map<Integer, String> pinned = new TreeMap<>(own.pinned());
        pinned.putAll(more.pinned());
        return new ToolWishes(forbidden, pinned);
    }

    /** Tools of the operations with their angles, hits and largest force. */
    static List<UsedTool> used(List<Operation> operations) {
        Map<String, List<Operation>> byTool = new LinkedHashMap<>();
        operations.forEach(op -> byTool.computeIfAbsent(op.tool().id(), id -> new ArrayList<>()).add(op));
        return byTool.values().stream().map(PartTooling::ofOneTool).toList();
    }

    private static UsedTool ofOneTool(List<Operation> operations) {
        Tool tool = operations.getFirst().tool();
        TreeSet<Double> angles = new TreeSet<>();
        operations.forEach(op -> op.hits().forEach(hit -> angles.add(hit.angleDeg())));
        return new UsedTool(tool, List.copyOf(angles), operations.stream().mapToInt(op -> op.hits().size()).sum(),
                operations.stream().mapToDouble(Operation::forceN).max().orElse(0));
    }
}
