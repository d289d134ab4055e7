// SPDX-License-Identifier: EPL-2.0
package punchwright.ui;

import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Says which perspective opens first and that the window keeps its size from one start to the next. */
final class PunchwrightAdvisor extends WorkbenchAdvisor {

    private final Optional<Path> workspace;

    /** With the workspace that opens first, if any. */
    PunchwrightAdvisor(Optional<Path> workspace) {
        this.workspace = workspace;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
    }

    @Override
    public String getInitialWindowPerspectiveId() {
        return PlanningPerspective.ID;
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new PunchwrightWindowAdvisor(configurer, workspace);
    }
}
