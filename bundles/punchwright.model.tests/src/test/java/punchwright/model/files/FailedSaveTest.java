// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.Samples;
import punchwright.model.shop.ToolShape;

/** Saves that fail: the file on disk stays the last saved one, and one message says why. */
class FailedSaveTest {

    @TempDir
    Path folder;

    @BeforeEach
    void fill() throws WorkspaceException {
        WorkspaceTest.fill(folder);
    }

    private void failsWith(FileProblem expected, Storage storage) throws Exception {
        Path library = folder.resolve("library.pwlib");
        String before = Files.readString(library);
        try (Workspace workspace = Workspace.open(folder, Workspace.Access.WRITE, storage)) {
            workspace.library().setName("Changed");
            WorkspaceException e = assertThrows(WorkspaceException.class, workspace::saveAll);
            assertEquals(expected, e.problem(), e.getMessage());
            assertTrue(e.getMessage().contains(library.toString()), e.getMessage());
        }
        assertEquals(before, Files.readString(library));
        try (Stream<Path> files = Files.walk(folder)) {
            assertEquals(0, files.filter(f -> f.toString().endsWith(AtomicFiles.TEMPORARY)).count());
        }
    }

    @Test
    void aDiskThatFillsHalfWay() throws Exception {
        failsWith(FileProblem.DISK_FULL, new Storage() {
            @Override
            void writeForced(Path file, byte[] content) throws IOException {
                Files.write(file, Arrays.copyOf(content, content.length / 2));
                throw new FileSystemException(file.toString(), null, "No space left on device");
            }
        });
    }

    @Test
    void theSystemsOwnFullDevice() throws Exception {
        assumeTrue(Files.exists(Path.of("/dev/full")), "skipped, the system has no /dev/full");
        failsWith(FileProblem.DISK_FULL, new Storage() {
            @Override
            void writeForced(Path file, byte[] content) throws IOException {
                try (FileOutputStream full = new FileOutputStream("/dev/full")) {
                    full.write(content);
                }
            }
        });
    }

    @Test
    void noRightToWrite() throws Exception {
        failsWith(FileProblem.READ_ONLY, new Storage() {
            @Override
            void writeForced(Path file, byte[] content) throws IOException {
                throw new AccessDeniedException(file.toString());
            }
        });
    }

    @Test
    void aRenameThatFails() throws Exception {
        failsWith(FileProblem.WRITE_FAILED, new Storage() {
            @Override
            void replace(Path file, Path target) throws IOException {
                throw new FileSystemException(file.toString(), target.toString(), "device went away");
            }
        });
    }

    @Test
    void aCharacterThatXmlCannotHold() throws Exception {
        Path library = folder.resolve("library.pwlib");
        String before = Files.readString(library);
        try (Workspace workspace = Workspace.open(folder)) {
            workspace.library().setNotes("bell \u0007 inside");
            WorkspaceException e = assertThrows(WorkspaceException.class, workspace::saveAll);
            assertEquals(FileProblem.NOT_WRITABLE, e.problem(), e.getMessage());
        }
        assertEquals(before, Files.readString(library));
    }

    @Test
    void aReferenceToAnObjectInNoFile() throws Exception {
        try (Workspace workspace = Workspace.open(folder)) {
            workspace.library().getMachines().get(0).getStanding().get(0).setTool(Samples.tool("stray", ToolShape.ROUND, 5, 0));
            WorkspaceException e = assertThrows(WorkspaceException.class, workspace::saveAll);
            assertEquals(FileProblem.NOT_WRITABLE, e.problem(), e.getMessage());
        }
    }

    @Test
    void leftOversOfAKilledSaveAreSweptAway() throws Exception {
        Path leftOver = folder.resolve("parts/.cover.pwpart" + AtomicFiles.TEMPORARY);
        Files.writeString(leftOver, "half a fi");
        Workspace.open(folder).close();
        assertTrue(Files.notExists(leftOver));
    }

    @Test
    void aReallyFullAndAReallyReadOnlyDisk() throws Exception {
        Path disk = Files.createDirectories(folder.resolve("disk"));
        assumeTrue(run("mount", "-t", "tmpfs", "-o", "size=64k", "none", disk.toString()),
                "skipped, no right to mount a small disk");
        try {
            WorkspaceTest.fill(disk);
            Path library = disk.resolve("library.pwlib");
            String before = Files.readString(library);
            try (Workspace workspace = Workspace.open(disk)) {
                workspace.library().setNotes("x".repeat(100_000));
                assertEquals(FileProblem.DISK_FULL, assertThrows(WorkspaceException.class, workspace::saveAll).problem());
            }
            assertEquals(before, Files.readString(library));
            assertTrue(run("mount", "-o", "remount,ro", disk.toString()));
            assertEquals(FileProblem.READ_ONLY, assertThrows(WorkspaceException.class, () -> Workspace.open(disk)).problem());
            try (Workspace reader = Workspace.open(disk, Workspace.Access.READ)) {
                assertEquals(1, reader.parts().size());
            }
            assertEquals(before, Files.readString(library));
        } finally {
            run("umount", disk.toString());
        }
    }

    private static boolean run(String... command) {
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
            return process.waitFor(10, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
