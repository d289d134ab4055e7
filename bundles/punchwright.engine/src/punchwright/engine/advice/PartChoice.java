// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import punchwright.engine.finding.Finding;
import punchwright.engine.press.Machine;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.Operation;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolCheck;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.engine.tooling.ToolingJob;
import punchwright.engine.tooling.UsedTool;

/**
 * What the choice of tools gives for one part on one machine.
 *
 * @param costSeconds  what was made least, s of the machine a piece
 * @param boundSeconds least by proof
 * @param seconds      press time of the hits alone, s a piece
 * @param wear         cost of wear a piece
 * @param hits         hits a piece
 * @param used         tools with angles, hits and force, by id in order of use
 * @param depreciation wear a piece that a tool's price makes, by tool id
 * @param refusals     errors; empty when the part can be made
 */
record PartChoice(double costSeconds, double boundSeconds, double seconds, double wear, int hits, Map<String, UsedTool> used,
        Map<String, Double> depreciation, List<Finding> refusals) {

    static PartChoice of(ToolingJob job, ChoiceWeights weights, ToolWeighing w) {
        Machine machine = job.machine();
        Map<String, List<Operation>> byTool = new LinkedHashMap<>();
        w.operations().operations().forEach(o -> byTool.computeIfAbsent(o.tool().id(), id -> new ArrayList<>()).add(o));
        Map<String, UsedTool> used = new LinkedHashMap<>();
        Map<String, Double> depreciation = new LinkedHashMap<>();
        double seconds = 0;
        double wear = 0;
        int hits = 0;
        for (List<Operation> list : byTool.values()) {
            UsedTool u = used(list);
            Tool t = u.tool();
            used.put(t.id(), u);
            double perHit = ToolCheck.wearPerHit(t, job.material());
            wear += u.hits() * perHit;
            depreciation.put(t.id(), u.hits() * perHit * ToolCheck.priceShare(t));
            hits += u.hits();
            seconds += list.stream().mapToDouble(o -> ToolCheck.seconds(machine, weights, o)).sum();
        }
        List<Finding> refusals = w.operations().findings().stream().filter(Finding::isError).toList();
        return new PartChoice(w.costSeconds(), w.boundSeconds(), seconds, wear, hits, used, depreciation, refusals);
    }

    private static UsedTool used(List<Operation> operations) {
        TreeSet<Double> angles = new TreeSet<>();
        operations.forEach(o -> o.hits().forEach(h -> angles.add(h.angleDeg())));
        return new UsedTool(operations.getFirst().tool(), List.copyOf(angles), operations.stream().mapToInt(o -> o.hits().size())
                .sum(), operations.stream().mapToDouble(Operation::forceN).max().orElse(0));
    }

    boolean made() {
        return refusals.isEmpty();
    }
}
