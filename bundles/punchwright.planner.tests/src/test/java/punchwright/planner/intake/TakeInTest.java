// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.planning.CancelledException;
import punchwright.engine.planning.Progress;
import punchwright.model.files.Workspace;
import punchwright.model.shop.Material;
import punchwright.model.shop.ShopFactory;
import punchwright.model.work.Order;
import punchwright.model.work.Part;
import punchwright.model.work.WorkFactory;
import punchwright.planner.convert.DrawingStore;
import punchwright.planner.convert.PartReader;

/** All or nothing, there and back. */
class TakeInTest {

    @TempDir
    Path folder;
    @TempDir
    Path outside;
    private Workspace workspace;
    private Material steel;

    @BeforeEach
    void open() throws IOException {
        workspace = Workspace.create(folder, "Shop", "EUR");
        steel = ShopFactory.eINSTANCE.createMaterial();
        steel.setId("steel");
        steel.setName("Steel");
        workspace.library().getMaterials().add(steel);
        workspace.saveAll();
        Files.delete(folder.resolve("library.pwlib.bak"));
        Files.writeString(outside.resolve("a.dxf"), Drawn.mm(Drawn.plate(0, 0, 100, 50), Drawn.plate(200, 0, 40, 40)));
        Files.createDirectories(outside.resolve("sub"));
        Files.writeString(outside.resolve("sub/a.dxf"), Drawn.mm(Drawn.plate(0, 0, 70, 70)));
    }

    @AfterEach
    void close() {
        workspace.close();
    }

    private NewPart part(String id, Path drawing, int quantity) {
        Part part = WorkFactory.eINSTANCE.createPart();
        part.setId(id);
        part.setNumber(id);
        part.setName(id);
        part.setMaterial(steel);
        part.setThicknessMm(2);
        part.setShape(WorkFactory.eINSTANCE.createDrawnShape());
        return new NewPart(part, drawing, quantity);
    }

    private List<NewPart> two() {
        NewPart big = part("big", outside.resolve("a.dxf"), 5);
        FoundPart found = DrawingReading.of(outside.resolve("a.dxf"), punchwright.engine.drawing.DrawingOptions.USUAL).parts()
                .get(0);
        big.shape().setPick(WorkFactory.eINSTANCE.createPickPoint());
        big.shape().getPick().setXMm(found.place().x());
        big.shape().getPick().setYMm(found.place().y());
        return List.of(big, part("other", outside.resolve("sub/a.dxf"), 3));
    }

    private Order order() {
        Order order = WorkFactory.eINSTANCE.createOrder();
        order.setId("o-7");
        order.setNumber("O-7");
        order.setName("O-7");
        return order;
    }

    private TreeMap<String, String> files() throws IOException {
        TreeMap<String, String> all = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).filter(f -> !f.getFileName().toString().equals(".lock"))
                    .toList()) {
                all.put(folder.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
        return all;
    }

    @Test
    void partsDrawingsAndOrderAreTakenInAndBackAndInAgain() throws IOException {
        TreeMap<String, String> before = files();
        TakeIn takeIn = new TakeIn(workspace, two(), order(), TakeInTest::here);
        takeIn.run(Progress.SILENT);
        TreeMap<String, String> after = files();
        assertEquals(List.of("drawings/a-2.dxf", "drawings/a.dxf", "library.pwlib", "orders/o-7.pworder", "parts/big.pwpart",
                "parts/other.pwpart"), List.copyOf(after.keySet()));
        PartReader reader = new PartReader(new DrawingStore(workspace));
        assertEquals(5000, reader.shape(workspace.parts().get(0)).areaMm2(), 1e-9);
        assertEquals(4900, reader.shape(workspace.parts().get(1)).areaMm2(), 1e-9);
        assertEquals(List.of(5, 3), workspace.orders().get(0).getLines().stream().map(l -> l.getQuantity()).toList());
        takeIn.undo();
        assertEquals(before, files());
        assertEquals(List.of(), workspace.parts());
        takeIn.redo();
        assertEquals(after, files());
        takeIn.undo();
        assertEquals(before, files());
    }

    @Test
    void whatWasTakenInIsReadAgain() throws IOException {
        new TakeIn(workspace, two(), order(), TakeInTest::here).run(Progress.SILENT);
        workspace.close();
        workspace = Workspace.open(folder);
        assertEquals(List.of(), workspace.problems());
        assertEquals(2, workspace.parts().size());
        assertEquals(5000, new PartReader(new DrawingStore(workspace)).shape(workspace.parts().get(0)).areaMm2(), 1e-9);
    }

    @Test
    void aDrawingThatIsThereAlreadyIsUsedAndOneOfTheSameNameIsLeftAlone() throws IOException {
        Files.createDirectories(folder.resolve("drawings"));
        Files.copy(outside.resolve("sub/a.dxf"), folder.resolve("drawings/a.dxf"));
        TakeIn takeIn = new TakeIn(workspace, two(), null, TakeInTest::here);
        takeIn.run(Progress.SILENT);
        assertEquals("drawings/a-2.dxf", takeInPart(0));
        assertEquals("drawings/a.dxf", takeInPart(1));
        takeIn.undo();
        assertTrue(Files.exists(folder.resolve("drawings/a.dxf")));
        assertEquals(2, files().size());
    }

    private String takeInPart(int index) {
        return ((punchwright.model.work.DrawnShape) workspace.parts().get(index).getShape()).getDrawing();
    }

    @Test
    void aMissingDrawingLeavesNothing() throws IOException {
        TreeMap<String, String> before = files();
        List<NewPart> parts = new ArrayList<>(two());
        parts.add(part("gone", outside.resolve("gone.dxf"), 1));
        assertThrows(IOException.class, () -> new TakeIn(workspace, parts, order(), TakeInTest::here).run(Progress.SILENT));
        assertEquals(before, files());
        assertEquals(List.of(), workspace.parts());
    }

    @Test
    void aRecordThatCannotBeWrittenTakesEverythingBack() throws IOException {
        TreeMap<String, String> before = files();
        TakeIn.ModelThread failing = work -> {
            if (workspace.parts().size() == 1) {
                throw new IOException("no room");
            }
            work.run();
        };
        TakeIn takeIn = new TakeIn(workspace, two(), order(), work -> {
            if (workspace.parts().size() == 1 && !failed) {
                failed = true;
                failing.run(work);
            }
            work.run();
        });
        assertThrows(IOException.class, () -> takeIn.run(Progress.SILENT));
        assertTrue(failed);
        assertEquals(before, files());
        assertEquals(List.of(), workspace.parts());
    }

    private boolean failed;

    @Test
    void cancelAtAnyStepLeavesNothing() throws IOException {
        TreeMap<String, String> before = files();
        int cancelled = 0;
        for (int step = 0; step < 12; step++) {
            int[] left = {step};
            Progress progress = new Progress() {
                @Override
                public void at(String what, double share) {
                    // nobody listens
                }

                @Override
                public boolean cancelled() {
                    return left[0]-- <= 0;
                }
            };
            TakeIn takeIn = new TakeIn(workspace, two(), order(), TakeInTest::here);
            try {
                takeIn.run(progress);
                takeIn.undo();
            } catch (CancelledException e) {
                cancelled++;
            }
            assertEquals(before, files(), "step " + step);
            assertEquals(List.of(), workspace.parts());
        }
        assertEquals(5, cancelled, "two drawings, two parts, the order");
    }

    private static void here(TakeIn.ModelWork work) throws IOException {
        work.run();
    }
}
