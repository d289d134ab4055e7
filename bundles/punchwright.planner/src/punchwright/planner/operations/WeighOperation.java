// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.engine.tooling.ToolWishes;
import punchwright.model.files.Workspace;
import punchwright.model.plan.Finding;
import punchwright.model.shop.Machine;
import punchwright.model.work.Part;
import punchwright.planner.convert.InputException;
import punchwright.planner.plans.PartTooling;
import punchwright.planner.plans.PartWeighing;
import punchwright.planner.plans.PlanWriter;

/** The operations of a part with the alternatives side by side, and what a pin or a ban costs. */
final class WeighOperation implements ShopOperation {

    /** Stands for every feature that the tool can make. */
    private static final int EVERY = 0;

    @Override
    public String name() {
        return "weigh";
    }

    @Override
    public String summary() {
        return "tell the ways to make each feature of a part side by side, why tools are passed over, what a pin or ban costs";
    }

    @Override
    public String usage() {
        return "PART [--machine MACHINE] [--pin [FEATURE=]TOOL]... [--forbid TOOL]... [--json]";
    }

    @Override
    public Set<String> options() {
        return Set.of("machine", "pin", "forbid", "json");
    }

    /** A tool wanted for a feature by number, or for every feature it can make. */
    private record Pin(int feature, String tool) {
    }

    @Override
    public Outcome run(Call call) throws IOException {
        if (call.words().size() != 1) {
            throw new UsageException("weigh takes one part number");
        }
        try (Workspace workspace = Workspace.open(call.workspace(), Workspace.Access.READ)) {
            Part part = Finder.part(workspace, call.words().getFirst());
            String wanted = call.option("machine", null);
            List<Machine> machines = wanted == null ? PlanOperation.inUse(workspace) : List.of(Finder.machine(workspace, wanted));
            List<Pin> pins = pins(workspace, call);
            Set<String> forbidden = new TreeSet<>();
            for (String typed : call.all("forbid")) {
                forbidden.add(Finder.tool(workspace, typed).getId());
            }
            PartTooling tooling = new PartTooling(workspace.library(), workspace.paths());
            List<PartWeighing> weighed = new ArrayList<>();
            for (Machine m : machines) {
                call.progress().at(m.getName(), (double) weighed.size() / machines.size());
                weighed.add(tooling.weigh(part, m, null, (features, free) -> wishes(forbidden, pins, features, free),
                        call.progress()));
            }
            return outcome(weighed, workspace.library().getCurrency());
        } catch (InputException e) {
            List<punchwright.engine.finding.Finding> why = List.of(e.finding());
            return new Outcome(ExitCode.INPUT, List.of(), PlanWriter.findings(why), List.of(), List.of(), List.of());
        }
    }

    /** {@code TOOL}, or {@code FEATURE=TOOL} with the feature's number. */
    private static List<Pin> pins(Workspace workspace, Call call) throws IOException {
        List<Pin> pins = new ArrayList<>();
        for (String typed : call.all("pin")) {
            int at = typed.indexOf('=');
            String tool = Finder.tool(workspace, typed.substring(at + 1).strip()).getId();
            pins.add(new Pin(at < 0 ? EVERY : feature(typed.substring(0, at)), tool));
        }
        return pins;
    }

    private static int feature(String text) {
        try {
            int n = Integer.parseInt(text.strip());
            if (n > 0) {
                return n;
            }
        } catch (NumberFormatException e) {
            // said below, with the numbers that are too small
        }
        throw new UsageException("--pin wants TOOL or FEATURE=TOOL with the feature's number from 1, as in 3=T-012; given: "
                + text);
    }

    private static ToolWishes wishes(Set<String> forbidden, List<Pin> pins, FeatureSet features, ToolWeighing free) {
        Map<Integer, String> pinned = new TreeMap<>();
        for (Pin pin : pins) {
            if (pin.feature() > features.features().size()) {
                throw new UsageException("--pin: the part has features 1 to " + features.features().size() + "; given: " + pin
                        .feature());
            }
            if (pin.feature() != EVERY) {
                pinned.put(pin.feature(), pin.tool());
            }
            for (FeatureWays w : pin.feature() == EVERY ? free.ways() : List.<FeatureWays>of()) {
                if (w.alternatives().stream().anyMatch(a -> a.tools().stream().anyMatch(t -> t.id().equals(pin.tool())))) {
                    w.features().stream().map(Feature::number).forEach(n -> pinned.put(n, pin.tool()));
                }
            }
        }
        return new ToolWishes(forbidden, pinned);
    }

    private static Outcome outcome(List<PartWeighing> weighed, String currency) {
        List<String> lines = new ArrayList<>();
        List<Map<String, Object>> records = new ArrayList<>();
        Map<String, Finding> findings = new LinkedHashMap<>();
        boolean made = false;
        for (PartWeighing w : weighed) {
            lines.addAll(WeighingTable.of(w, currency));
            records.add(WeighingRecord.of(w, currency));
            made |= w.wished().operations().complete();
            PlanWriter.findings(w.findings()).forEach(f -> findings.putIfAbsent(f.getCode() + f.getSubject() + f.getMessage(),
                    f));
        }
        return new Outcome(made ? ExitCode.GOOD : ExitCode.FINDINGS, lines, List.copyOf(findings.values()), List.of(), List.of(),
                records);
    }
}
