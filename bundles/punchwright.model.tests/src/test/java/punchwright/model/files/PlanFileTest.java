// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.plan.Plan;

/** Plans read and written beside the thread that owns the workspace. */
class PlanFileTest {

    @TempDir
    Path folder;

    @Test
    void aPlanReadApartLeadsIntoTheWorkspaceOnceTaken() throws Exception {
        WorkspaceTest.fill(folder);
        String id = planId();
        try (Workspace workspace = Workspace.open(folder)) {
            int before = workspace.resourceSet().getResources().size();
            PlanFile file = CompletableFuture.supplyAsync(() -> read(workspace, id)).get();
            assertEquals(before, workspace.resourceSet().getResources().size());
            Plan plan = workspace.take(file);
            EcoreUtil.resolveAll(plan);
            assertSame(workspace.orders().get(0), plan.getOrder());
            assertSame(workspace.library().getMachines().get(0), plan.getMachine());
            assertSame(plan, workspace.plans().get(0));
            assertEquals(1, workspace.plans().size());
            assertFalse(workspace.save(plan), "nothing has changed");
        }
    }

    @Test
    void aPlanOfASecondReadingIsStoredAndReplacesTheLoadedOne() throws Exception {
        WorkspaceTest.fill(folder);
        try (Workspace workspace = Workspace.open(folder); Workspace second = Workspace.open(folder, Workspace.Access.READ)) {
            Plan old = workspace.plans().get(0);
            Plan made = EcoreUtil.copy(second.plans().get(0));
            made.setTotalTimeS(4711);
            Plan taken = workspace.take(workspace.storePlan(made));
            EcoreUtil.resolveAll(taken);
            assertEquals(4711, taken.getTotalTimeS());
            assertSame(workspace.orders().get(0), taken.getOrder());
            assertEquals(1, workspace.plans().size());
            assertTrue(workspace.plans().get(0) != old);
            assertTrue(Files.exists(folder.resolve("plans/" + taken.getId() + ".pwplan.bak")));
            taken.setTotalTimeS(12);
            assertTrue(workspace.save(taken), "the workspace knows what stands on disk");
        }
    }

    @Test
    void aMissingAndADamagedPlanAreRefusedWithTheFile() throws Exception {
        WorkspaceTest.fill(folder);
        Path damaged = folder.resolve("plans/bad.pwplan");
        Files.writeString(damaged, "<plan");
        try (Workspace workspace = Workspace.open(folder)) {
            assertEquals(FileProblem.MISSING, assertThrows(WorkspaceException.class, () -> workspace.readPlan("none")).problem());
            WorkspaceException bad = assertThrows(WorkspaceException.class, () -> workspace.readPlan("bad"));
            assertEquals(FileProblem.DAMAGED, bad.problem());
            assertEquals(damaged.toAbsolutePath().normalize(), bad.file());
        }
    }

    @Test
    void nothingIsStoredInAWorkspaceOpenForReading() throws Exception {
        WorkspaceTest.fill(folder);
        try (Workspace workspace = Workspace.open(folder, Workspace.Access.READ)) {
            Plan plan = EcoreUtil.copy(workspace.plans().get(0));
            assertEquals(FileProblem.OPEN_FOR_READING, assertThrows(WorkspaceException.class, () -> workspace.storePlan(plan))
                    .problem());
        }
    }

    private String planId() throws WorkspaceException {
        try (Workspace workspace = Workspace.open(folder, Workspace.Access.READ)) {
            return workspace.plans().get(0).getId();
        }
    }

    private static PlanFile read(Workspace workspace, String id) {
        try {
            return workspace.readPlan(id);
        } catch (WorkspaceException e) {
            throw new IllegalStateException(e);
        }
    }
}
