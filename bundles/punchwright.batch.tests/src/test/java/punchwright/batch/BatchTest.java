// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.planner.operations.ExitCode;
import punchwright.planner.operations.ShopOperation;

/** Words, exit codes and streams of the command line. */
class BatchTest {

    private final Shell shell = new Shell();

    @Test
    void helpGoesToOutListsEveryOperationAndIsASuccess() {
        assertEquals(ExitCode.GOOD.number(), shell.run("--help"));
        assertTrue(shell.out().startsWith("Usage:"));
        for (ShopOperation o : Shell.OPERATIONS.all()) {
            assertTrue(shell.out().contains("\n  " + o.name() + " "), o.name());
        }
        assertEquals("", shell.err());
    }

    @Test
    void eachOperationTellsItsOwnUsage() {
        for (ShopOperation o : Shell.OPERATIONS.all()) {
            assertEquals(ExitCode.GOOD.number(), shell.run(o.name(), "--help"));
            assertTrue(shell.out().contains((o.name() + " " + o.usage()).strip()), o.name());
        }
    }

    @Test
    void unknownWordsAreNamedOnTheErrorStream() {
        assertEquals(ExitCode.USAGE.number(), shell.run("frobnicate"));
        assertTrue(shell.err().contains("frobnicate"));
        assertEquals("", shell.out());
    }

    @Test
    void noWordsAtAllAreAnError() {
        assertEquals(ExitCode.USAGE.number(), shell.run());
    }

    @Test
    void anOptionThatTheOperationDoesNotTakeIsNamed() {
        assertEquals(ExitCode.USAGE.number(), shell.run("check", "--colour", "red"));
        assertTrue(shell.err().contains("--colour"), shell.err());
    }

    @Test
    void anOptionWithoutItsValueIsNamed() {
        assertEquals(ExitCode.USAGE.number(), shell.run("plan", "A-1", "--machine"));
        assertTrue(shell.err().contains("--machine"), shell.err());
    }

    @Test
    void aFolderThatIsNoWorkspaceIsNamedWithTheWayOut(@TempDir Path folder) {
        assertEquals(ExitCode.INPUT.number(), shell.run("--workspace", folder.toString(), "check"));
        assertTrue(shell.err().contains(folder.toString()), shell.err());
        assertTrue(shell.err().startsWith("error: "), shell.err());
    }
}
