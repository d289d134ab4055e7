// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.shop.Machine;

/** Every format that was ever written stays loadable: one file a format under test resources. */
class MigrationTest {

    @TempDir
    Path folder;

    /** Validation: 1 tonne-force = 9.80665 kN exactly (standard acceleration of free fall, 3rd CGPM 1901; also ISO 80000-4). */
    @Test
    void formatZeroKeptForcesInTonnes() throws Exception {
        Path library = folder.resolve("library.pwlib");
        try (InputStream old = MigrationTest.class.getResourceAsStream("library-format-0.pwlib")) {
            Files.copy(old, library);
        }
        String before = Files.readString(library);
        try (Workspace workspace = Workspace.open(folder)) {
            Machine machine = workspace.library().getMachines().get(0);
            assertEquals(196.133, machine.getPressForceKn(), 1e-9);
            assertEquals(117.6798, machine.getPlaces().get(0).getForceLimitKn(), 1e-9);
            assertEquals(List.of(FileProblem.MIGRATED), workspace.problems().stream().map(WorkspaceException::problem).toList());
            assertTrue(workspace.problems().get(0).getMessage().contains("pressForceT [t] to pressForceKn [kN]"));
            assertEquals(before, Files.readString(library), "opening must not change the file");
            assertTrue(workspace.save(workspace.library()));
        }
        assertEquals(before, Files.readString(folder.resolve("library.pwlib.bak")));
        assertTrue(Files.readString(library).contains("<?punchwright format=\"1\"?>"));
        try (Workspace workspace = Workspace.open(folder)) {
            assertEquals(196.133, workspace.library().getMachines().get(0).getPressForceKn(), 1e-9);
            assertEquals(List.of(), workspace.problems());
        }
    }
}
