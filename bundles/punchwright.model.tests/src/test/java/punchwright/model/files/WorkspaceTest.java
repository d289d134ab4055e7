// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.Samples;
import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.model.work.Order;
import punchwright.model.work.Part;

/** Load and save of whole workspaces. */
class WorkspaceTest {

    @TempDir
    Path folder;

    /** Writes the sample library, part, assembly, order and plan. */
    static void fill(Path folder) throws WorkspaceException {
        try (Workspace workspace = Workspace.create(folder, "Test shop", "EUR")) {
            Library sample = Samples.library();
            workspace.library().getMachines().addAll(List.copyOf(sample.getMachines()));
            workspace.library().getTools().addAll(List.copyOf(sample.getTools()));
            workspace.library().getHolders().addAll(List.copyOf(sample.getHolders()));
            workspace.library().getMaterials().addAll(List.copyOf(sample.getMaterials()));
            workspace.library().getStock().addAll(List.copyOf(sample.getStock()));
            Part part = Samples.part(workspace.library());
            Order order = Samples.order(part);
            workspace.put(part);
            workspace.put(Samples.assembly(part));
            workspace.put(order);
            workspace.put(Samples.plan(workspace.library(), part, order));
            assertEquals(5, workspace.saveAll());
        }
    }

    @Test
    void whatIsSavedIsReadBackWithAllReferences() throws WorkspaceException {
        fill(folder);
        try (Workspace workspace = Workspace.open(folder)) {
            Part part = workspace.parts().get(0);
            Order order = workspace.orders().get(0);
            Plan plan = workspace.plans().get(0);
            assertSame(workspace.library().getMaterials().get(0), part.getMaterial());
            assertSame(part, order.getLines().get(0).getItem());
            assertSame(part, workspace.assemblies().get(0).getItems().get(0).getItem());
            assertSame(order, plan.getOrder());
            assertSame(workspace.library().getMachines().get(0).getPlaces().get(0),
                    plan.getJobs().get(0).getToolUses().get(0).getPlace());
            assertSame(plan.getJobs().get(0).getOperations().get(0),
                    plan.getJobs().get(0).getLayouts().get(0).getHits().get(5).getOperation());
            assertEquals(List.of(), workspace.unresolved());
            assertEquals(List.of(), workspace.problems());
            Library sample = Samples.library();
            assertTrue(EcoreUtil.equals(sample.getTools(), workspace.library().getTools()), "tools read back differ");
            assertTrue(EcoreUtil.equals(sample.getMachines(), workspace.library().getMachines()), "machines read back differ");
        }
    }

    @Test
    void savingWithoutAChangeWritesNothing() throws Exception {
        fill(folder);
        String before = Files.readString(folder.resolve("library.pwlib"));
        String backup = Files.readString(folder.resolve("library.pwlib.bak"));
        try (Workspace workspace = Workspace.open(folder)) {
            workspace.plans();
            assertEquals(0, workspace.saveAll());
        }
        assertEquals(before, Files.readString(folder.resolve("library.pwlib")));
        assertEquals(backup, Files.readString(folder.resolve("library.pwlib.bak")));
    }

    @Test
    void oneChangeIsOneLineInTheDiffAndKeepsTheOldFile() throws Exception {
        fill(folder);
        Path file = folder.resolve("library.pwlib");
        List<String> before = Files.readAllLines(file);
        try (Workspace workspace = Workspace.open(folder)) {
            workspace.library().getTools().get(1).setPrice(135.5);
            assertTrue(workspace.save(workspace.library()));
        }
        List<String> after = Files.readAllLines(file);
        assertEquals(before.size(), after.size());
        long different = 0;
        for (int i = 0; i < before.size(); i++) {
            different += before.get(i).equals(after.get(i)) ? 0 : 1;
        }
        assertEquals(1, different);
        assertEquals(before, Files.readAllLines(folder.resolve("library.pwlib.bak")));
        assertEquals(0, leftOvers());
    }

    @Test
    void everyHitStandsOnALineOfItsOwn() throws Exception {
        fill(folder);
        List<String> lines = Files.readAllLines(folder.resolve("plans/o-100-press.pwplan"));
        assertEquals(6, lines.stream().filter(l -> l.strip().startsWith("<hits ") && l.endsWith("/>")).count());
    }

    @Test
    void referencesBetweenFilesAreRelativeSoThatTheFolderMayMove(@TempDir Path elsewhere) throws Exception {
        fill(folder);
        assertTrue(Files.readString(folder.resolve("parts/cover.pwpart")).contains("\"../library.pwlib#dc01\""));
        Path moved = elsewhere.resolve("a folder with spaces & umlauts \u00e4");
        Files.move(folder, moved);
        try (Workspace workspace = Workspace.open(moved)) {
            assertEquals("DC01", workspace.parts().get(0).getMaterial().getGrade());
        }
        Files.createDirectories(folder);
    }

    @Test
    void aPlanReplacesTheOneWithItsIdentifier() throws WorkspaceException {
        fill(folder);
        try (Workspace workspace = Workspace.open(folder)) {
            Plan again = Samples.plan(workspace.library(), workspace.parts().get(0), workspace.orders().get(0));
            again.setTotalCost(77);
            workspace.put(again);
            assertTrue(workspace.save(again));
        }
        try (Workspace workspace = Workspace.open(folder)) {
            assertEquals(1, workspace.plans().size());
            assertEquals(77, workspace.plan("o-100-press").orElseThrow().getTotalCost());
            assertTrue(workspace.plan("no-such-plan").isEmpty());
        }
    }

    @Test
    void removedFilesStayAsBackup() throws WorkspaceException {
        fill(folder);
        try (Workspace workspace = Workspace.open(folder)) {
            workspace.remove(workspace.orders().get(0));
            assertEquals(0, workspace.orders().size());
        }
        assertFalse(Files.exists(folder.resolve("orders/o-100.pworder")));
        assertTrue(Files.exists(folder.resolve("orders/o-100.pworder.bak")));
    }

    @Test
    void twoProgramsCannotWriteAtOnceButOneMayRead() throws WorkspaceException {
        fill(folder);
        try (Workspace first = Workspace.open(folder)) {
            assertFalse(first.isReadOnly());
            WorkspaceException refused = assertThrows(WorkspaceException.class, () -> Workspace.open(folder));
            assertEquals(FileProblem.LOCKED, refused.problem());
            try (Workspace reader = Workspace.open(folder, Workspace.Access.READ)) {
                assertTrue(reader.isReadOnly());
                assertEquals(1, reader.orders().size());
                WorkspaceException no = assertThrows(WorkspaceException.class, reader::saveAll);
                assertEquals(FileProblem.OPEN_FOR_READING, no.problem());
            }
        }
        Workspace.open(folder).close();
    }

    @Test
    void anotherProgramHoldsTheLockToo() throws Exception {
        fill(folder);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process other = new ProcessBuilder(java, "-cp", System.getProperty("java.class.path"), LockHolder.class.getName(),
                folder.toString()).redirectErrorStream(true).start();
        try {
            assertEquals('L', other.getInputStream().read());
            WorkspaceException refused = assertThrows(WorkspaceException.class, () -> Workspace.open(folder));
            assertEquals(FileProblem.LOCKED, refused.problem());
        } finally {
            other.destroyForcibly().waitFor();
        }
        Workspace.open(folder).close();
    }

    @Test
    void aChangeFromOutsideIsNotOverwritten() throws Exception {
        fill(folder);
        Path file = folder.resolve("library.pwlib");
        try (Workspace workspace = Workspace.open(folder)) {
            String foreign = Files.readString(file).replace("Test press", "Press renamed elsewhere");
            Files.writeString(file, foreign);
            assertEquals(List.of(file), workspace.changedOutside());
            workspace.library().setName("Mine");
            WorkspaceException refused = assertThrows(WorkspaceException.class, () -> workspace.save(workspace.library()));
            assertEquals(FileProblem.CHANGED_OUTSIDE, refused.problem());
            assertEquals(foreign, Files.readString(file));
        }
    }

    @Test
    void identifiersThatAreNoFileNamesAreRefused() throws WorkspaceException {
        fill(folder);
        try (Workspace workspace = Workspace.open(folder)) {
            for (String id : new String[] {"../evil", "a/b", "", "con", "x ", ".hidden", null, "a\u0000b"}) {
                Part part = Samples.part(workspace.library());
                part.setId(id);
                WorkspaceException refused = assertThrows(WorkspaceException.class, () -> workspace.put(part), () -> "id " + id);
                assertEquals(FileProblem.BAD_ID, refused.problem());
            }
        }
    }

    private long leftOvers() throws Exception {
        try (var files = Files.walk(folder)) {
            return files.filter(f -> f.toString().endsWith(AtomicFiles.TEMPORARY)).count();
        }
    }
}
