// SPDX-License-Identifier: EPL-2.0
package punchwright.ui;

import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Sets the window up before it opens. */
final class PunchwrightWindowAdvisor extends WorkbenchWindowAdvisor {

    PunchwrightWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer window = getWindowConfigurer();
        window.setInitialSize(new Point(1360, 860));
        window.setTitle("Punchwright");
        window.setShowCoolBar(true);
        window.setShowStatusLine(true);
        window.setShowProgressIndicator(true);
    }
}
