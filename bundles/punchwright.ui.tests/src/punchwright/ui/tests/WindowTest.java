// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

/** The window that the product opens. */
class WindowTest {

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    }

    @Test
    void windowIsOpenAndCarriesTheName() {
        assertTrue(window().getShell().isVisible());
        assertTrue(window().getShell().getText().contains("Punchwright"));
    }

    @Test
    void planningPerspectiveOpensFirst() {
        assertEquals("punchwright.ui.perspective", window().getActivePage().getPerspective().getId());
    }
}
