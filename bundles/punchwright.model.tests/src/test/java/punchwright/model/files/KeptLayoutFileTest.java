// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.work.KeptLayout;
import punchwright.model.work.KeptPlacement;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.model.work.Want;
import punchwright.model.work.WorkFactory;

/** Arranged layouts in the file of their order, and files from before they could be kept. */
class KeptLayoutFileTest {

    @TempDir
    Path folder;

    @Test
    void aFileFromBeforeHasNoLayoutsAndEveryLineIsAMust() throws Exception {
        WorkspaceTest.fill(folder);
        try (Workspace workspace = Workspace.open(folder)) {
            Order order = workspace.orders().get(0);
            String before = Files.readString(workspace.fileOf(order));
            assertFalse(before.contains("want") || before.contains("<layouts"), "nothing is written for what is usual");
            assertEquals(Want.MUST, order.getLines().get(0).getWant());
            assertTrue(order.getLayouts().isEmpty());
            assertEquals(50, workspace.library().getRates().getRemnantValuePercent());
        }
    }

    @Test
    void whatIsArrangedComesBackAsItWas() throws Exception {
        WorkspaceTest.fill(folder);
        try (Workspace workspace = Workspace.open(folder)) {
            Order order = workspace.orders().get(0);
            order.getLines().get(0).setWant(Want.FILLER);
            order.getLayouts().add(arranged(workspace));
            workspace.save(order);
            String text = Files.readString(workspace.fileOf(order));
            assertEquals(2, text.lines().filter(l -> l.contains("<placements")).count());
        }
        try (Workspace workspace = Workspace.open(folder)) {
            Order order = workspace.orders().get(0);
            assertEquals(Want.FILLER, order.getLines().get(0).getWant());
            KeptLayout layout = order.getLayouts().get(0);
            assertSame(workspace.library().getStock().get(0), layout.getStock());
            assertSame(workspace.library().getMachines().get(0), layout.getMachine());
            KeptPlacement second = layout.getPlacements().get(1);
            assertSame(workspace.parts().get(0), second.getPart());
            assertEquals(112.625, second.getXMm());
            assertTrue(second.isLocked());
            assertFalse(layout.getPlacements().get(0).isLocked());
        }
    }

    private static KeptLayout arranged(Workspace workspace) {
        Part part = workspace.parts().get(0);
        KeptLayout layout = WorkFactory.eINSTANCE.createKeptLayout();
        layout.setId("k-1");
        layout.setMachine(workspace.library().getMachines().get(0));
        layout.setMaterial(part.getMaterial());
        layout.setThicknessMm(part.getThicknessMm());
        layout.setStock(workspace.library().getStock().get(0));
        for (int k = 0; k < 2; k++) {
            KeptPlacement placement = WorkFactory.eINSTANCE.createKeptPlacement();
            placement.setPart(part);
            placement.setXMm(112.625 * k);
            placement.setAngleDeg(90.0 * k);
            placement.setLocked(k == 1);
            layout.getPlacements().add(placement);
        }
        return layout;
    }
}
