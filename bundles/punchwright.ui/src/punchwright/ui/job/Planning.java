// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.files.Workspace;
import punchwright.model.files.WorkspaceException;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Machine;
import punchwright.model.work.Order;
import punchwright.ui.editor.Editors;
import punchwright.ui.editor.FileInput;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** Plans an order on machines in the background and brings the plans into the open workspace. */
public final class Planning {

    private Planning() {
    }

    /** Starts; asks first when there are changes that are not saved, since planning reads what is on disk. */
    public static void start(IWorkbenchWindow window, Order order, List<Machine> machines) {
        Session session = Session.current().orElseThrow();
        if (!OpenWorkspace.saved(window, session)) {
            return;
        }
        Path folder = session.folder();
        String orderId = order.getId();
        List<String> machineIds = machines.stream().map(Machine::getId).toList();
        Background.start(Texts.of("job.plan", order.getNumber()), monitor -> plan(folder, orderId, machineIds, monitor),
                plans -> keep(window, session, plans));
    }

    private static List<Plan> plan(Path folder, String order, List<String> machines, IProgressMonitor monitor) throws IOException {
        List<Plan> plans = new ArrayList<>();
        for (String machine : machines) {
            plans.addAll(ShopOperations.run("plan", folder, List.of(order), Map.of("machine", machine, "trial", "true"), monitor,
                    Background.TICKS / machines.size()).plans());
        }
        return plans;
    }

    private static void keep(IWorkbenchWindow window, Session session, List<Plan> plans) {
        if (Session.current().filter(s -> s == session).isEmpty()) {
            return;
        }
        Plan last = null;
        for (Plan made : plans) {
            try {
                last = keep(window, session, made);
            } catch (WorkspaceException e) {
                Messages.show(window.getShell(), e);
            }
        }
        Session.changed();
        if (last != null && plans.size() == 1) {
            Editors.open(last);
        }
    }

    private static Plan keep(IWorkbenchWindow window, Session session, Plan made) throws WorkspaceException {
        Workspace workspace = session.workspace();
        Optional<Plan> before = workspace.plan(made.getId());
        before.ifPresent(old -> close(window, session, old));
        Plan plan = Adopt.into(workspace.resourceSet(), made);
        workspace.put(plan);
        workspace.save(plan);
        return plan;
    }

    private static void close(IWorkbenchWindow window, Session session, Plan old) {
        IWorkbenchPage page = window.getActivePage();
        IEditorPart editor = page == null ? null : page.findEditor(new FileInput(old));
        if (editor != null) {
            page.closeEditor(editor, false);
        }
        session.forget(old);
    }
}
