// SPDX-License-Identifier: EPL-2.0
package punchwright.ui;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

import punchwright.ui.explorer.ExplorerView;
import punchwright.ui.findings.FindingsView;
import punchwright.ui.tooling.AdviceView;

/** The arrangement the window opens with: explorer on the left, editors, findings and progress below. */
public final class PlanningPerspective implements IPerspectiveFactory {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.perspective";
    private static final String PROGRESS = "org.eclipse.ui.views.ProgressView";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
        layout.addView(ExplorerView.ID, IPageLayout.LEFT, 0.19f, IPageLayout.ID_EDITOR_AREA);
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.77f, IPageLayout.ID_EDITOR_AREA);
        below.addView(FindingsView.ID);
        below.addPlaceholder(AdviceView.ID);
        below.addView(PROGRESS);
        layout.addShowViewShortcut(ExplorerView.ID);
        layout.addShowViewShortcut(FindingsView.ID);
        layout.addShowViewShortcut(AdviceView.ID);
        layout.addShowViewShortcut(PROGRESS);
        layout.getViewLayout(ExplorerView.ID).setCloseable(false);
    }
}
