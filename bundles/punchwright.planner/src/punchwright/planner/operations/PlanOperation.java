// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import punchwright.model.files.Workspace;
import punchwright.model.plan.Finding;
import punchwright.model.plan.Plan;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.planner.plans.OrderPlanning;

/** Plans an order on one machine or on each, and keeps the plans in the workspace. */
final class PlanOperation implements ShopOperation {

    /** A trial reads only, so that it runs beside a workbench that has the workspace open; who called keeps the plans. */
    private static final String TRIAL = "trial";

    private final String programVersion;

    PlanOperation(String programVersion) {
        this.programVersion = programVersion;
    }

    @Override
    public String name() {
        return "plan";
    }

    @Override
    public String summary() {
        return "plan an order on a machine, or on each that is in use; keeps the plans, unless it is a trial";
    }

    @Override
    public String usage() {
        return "ORDER [--machine MACHINE] [--trial]";
    }

    @Override
    public Set<String> options() {
        return Set.of("machine", TRIAL);
    }

    @Override
    public Outcome run(Call call) throws IOException {
        if (call.words().size() != 1) {
            throw new UsageException("plan takes one order number");
        }
        boolean trial = call.options().containsKey(TRIAL);
        Workspace.Access access = trial ? Workspace.Access.READ : Workspace.Access.WRITE;
        try (Workspace workspace = Workspace.open(call.workspace(), access)) {
            Order order = Finder.order(workspace, call.words().get(0));
            OrderPlanning planning = new OrderPlanning(workspace.library(), workspace.paths(), programVersion);
            List<Plan> plans = new ArrayList<>();
            for (Machine machine : machines(workspace, call)) {
                plans.add(planning.plan(order, machine, call.progress()));
            }
            if (!trial) {
                keep(workspace, plans);
            }
            return outcome(plans);
        }
    }

    /** Keeps what was planned; a plan that could not even be begun does not take the place of an earlier one. */
    private static void keep(Workspace workspace, List<Plan> plans) throws IOException {
        for (Plan plan : plans) {
            if (!plan.getJobs().isEmpty()) {
                workspace.put(plan);
                workspace.save(plan);
            }
        }
    }

    private static List<Machine> machines(Workspace workspace, Call call) throws IOException {
        String wanted = call.option("machine", null);
        return wanted == null ? inUse(workspace) : List.of(Finder.machine(workspace, wanted));
    }

    static List<Machine> inUse(Workspace workspace) {
        return workspace.library().getMachines().stream().filter(m -> m.getStatus() == ItemStatus.IN_USE).toList();
    }

    private static Outcome outcome(List<Plan> plans) {
        List<String> lines = new ArrayList<>(PlanTable.HEADER);
        List<Finding> findings = new ArrayList<>();
        for (Plan plan : plans) {
            lines.addAll(PlanTable.lines(plan));
            findings.addAll(plan.getFindings());
        }
        return new Outcome(code(plans), lines, findings, List.of(), plans);
    }

    private static ExitCode code(List<Plan> plans) {
        if (plans.stream().anyMatch(PlanTable::proven)) {
            return ExitCode.GOOD;
        }
        return plans.stream().allMatch(p -> p.getJobs().isEmpty()) ? ExitCode.INPUT : ExitCode.FINDINGS;
    }
}
