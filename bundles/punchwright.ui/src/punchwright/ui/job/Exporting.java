// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.job;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.program.Program;
import org.eclipse.ui.IWorkbenchWindow;

import punchwright.model.work.Order;
import punchwright.planner.operations.Outcome;
import punchwright.ui.session.Session;
import punchwright.ui.text.Texts;

/** Writes the process sheets and the cost roll-up of an order in the background. */
public final class Exporting {

    private Exporting() {
    }

    /** Starts; asks first when there are changes that are not saved. */
    public static void start(IWorkbenchWindow window, Order order) {
        Session session = Session.current().orElseThrow();
        if (!OpenWorkspace.saved(window, session)) {
            return;
        }
        Path folder = session.folder();
        String orderId = order.getId();
        Background.start(Texts.of("job.export", order.getNumber()),
                monitor -> ShopOperations.run("export", folder, List.of(orderId), Map.of(), monitor, Background.TICKS),
                outcome -> tell(window, outcome));
    }

    private static void tell(IWorkbenchWindow window, Outcome outcome) {
        Session.changed();
        List<Path> files = outcome.files();
        if (files.isEmpty()) {
            Messages.say(window.getShell(), "export.nothing");
            return;
        }
        String names = files.stream().map(f -> f.getFileName().toString()).collect(Collectors.joining("\n"));
        int answer = MessageDialog.open(MessageDialog.INFORMATION, window.getShell(), Texts.of("export.title"),
                Texts.of("export.done", files.get(0).getParent(), names), 0, Texts.of("export.openFolder"),
                IDialogConstants.CLOSE_LABEL);
        if (answer == 0) {
            Program.launch(files.get(0).getParent().toString());
        }
    }
}
