// SPDX-License-Identifier: EPL-2.0
package punchwright.ui;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The arrangement the window opens with. */
public final class PlanningPerspective implements IPerspectiveFactory {

    /** The identifier in plugin.xml. */
    public static final String ID = "punchwright.ui.perspective";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
    }
}
