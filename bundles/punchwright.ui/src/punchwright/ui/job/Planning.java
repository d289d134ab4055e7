// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.files.PlanFile;
import punchwright.model.files.Workspace;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** Plans an order on machines in the background, stores the plans, and takes them into the open workspace. */
public final class Planning {

    private Planning() {
    }

    /** Starts; asks first when there are changes that are not saved, since planning reads what is on disk. */
    public static void start(IWorkbenchWindow window, Order order, List<Machine> machines) {
        Session session = Session.current().orElseThrow();
        if (!OpenWorkspace.saved(window, session)) {
            return;
        }
        Workspace workspace = session.workspace();
        String orderId = order.getId();
        List<String> machineIds = machines.stream().map(Machine::getId).toList();
        Background.start(Texts.of("job.plan", order.getNumber()), monitor -> plan(workspace, orderId, machineIds, monitor),
                files -> Plans.take(window, session, files));
    }

    /** All plans are made before the first is stored: a cancelled job changes nothing. */
    private static List<PlanFile> plan(Workspace workspace, String order, List<String> machines, IProgressMonitor monitor)
            throws IOException {
        List<Plan> plans = new ArrayList<>();
        for (String machine : machines) {
            plans.addAll(ShopOperations.run("plan", workspace.paths().root(), List.of(order),
                    Map.of("machine", machine, "trial", "true"), monitor, Background.TICKS / machines.size()).plans());
        }
        if (monitor.isCanceled()) {
            throw new OperationCanceledException();
        }
        List<PlanFile> files = new ArrayList<>();
        for (Plan plan : plans) {
            files.add(workspace.storePlan(plan));
        }
        return files;
    }
}
