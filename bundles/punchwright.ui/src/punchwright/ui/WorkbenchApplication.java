// SPDX-License-Identifier: EPL-2.0
package punchwright.ui;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.PlatformUI;

/** Opens the workbench and keeps it until its last window is closed. */
public final class WorkbenchApplication implements IApplication {

    @Override
    public Object start(IApplicationContext context) {
        Display.setAppName("Punchwright");
        Display display = PlatformUI.createDisplay();
        try {
            int code = PlatformUI.createAndRunWorkbench(display, new PunchwrightAdvisor(workspace(context)));
            return code == PlatformUI.RETURN_RESTART ? EXIT_RESTART : EXIT_OK;
        } finally {
            display.dispose();
        }
    }

    private static Optional<Path> workspace(IApplicationContext context) {
        Object arguments = context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        return StartArguments.workspace(arguments instanceof String[] words ? words : new String[0]);
    }

    @Override
    public void stop() {
        if (!PlatformUI.isWorkbenchRunning()) {
            return;
        }
        IWorkbench workbench = PlatformUI.getWorkbench();
        Display display = workbench.getDisplay();
        display.syncExec(() -> {
            if (!display.isDisposed()) {
                workbench.close();
            }
        });
    }
}
