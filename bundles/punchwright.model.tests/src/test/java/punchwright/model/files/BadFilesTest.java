// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that must be refused, with one clear message and without damage. */
class BadFilesTest {

    @TempDir
    Path folder;

    private Path library;

    @BeforeEach
    void fill() throws WorkspaceException {
        WorkspaceTest.fill(folder);
        library = folder.resolve("library.pwlib");
    }

    private WorkspaceException refused(byte[] content) throws Exception {
        Files.write(library, content);
        WorkspaceException e = assertThrows(WorkspaceException.class, () -> Workspace.open(folder));
        assertEquals(library, e.file());
        assertTrue(e.getMessage().contains(library.toString()), e.getMessage());
        assertTrue(e.remedy(Locale.ENGLISH).length() > 20, e.getMessage());
        assertFalse(e.getMessage().contains("{"), e.getMessage());
        assertArrayEquals(content, Files.readAllBytes(library));
        return e;
    }

    @Test
    void emptyBinaryTruncatedAndForeign() throws Exception {
        byte[] good = Files.readAllBytes(library);
        assertEquals(FileProblem.EMPTY, refused(new byte[0]).problem());
        byte[] noise = new byte[4096];
        new Random(7).nextBytes(noise);
        assertEquals(FileProblem.DAMAGED, refused(noise).problem());
        assertEquals(FileProblem.DAMAGED, refused("0\nSECTION\n2\nHEADER\n".getBytes(StandardCharsets.UTF_8)).problem());
        assertEquals(FileProblem.DAMAGED, refused("<html><body/></html>".getBytes(StandardCharsets.UTF_8)).problem());
        for (int length = 1; length < good.length - 3; length += 97) {
            assertEquals(FileProblem.DAMAGED, refused(Arrays.copyOf(good, length)).problem(), "cut after " + length);
        }
    }

    @Test
    void anyByteTurnedGivesAFileOrOneException() throws Exception {
        byte[] good = Files.readAllBytes(library);
        Random random = new Random(11);
        for (int i = 0; i < 300; i++) {
            byte[] bad = good.clone();
            bad[random.nextInt(bad.length)] = (byte) random.nextInt(256);
            Files.write(library, bad);
            try (Workspace workspace = Workspace.open(folder)) {
                assertEquals(1, workspace.resourceSet().getResources().stream()
                        .filter(r -> r.getURI().lastSegment().equals("library.pwlib")).count());
            } catch (WorkspaceException e) {
                assertEquals(library, e.file());
            }
        }
    }

    @Test
    void newerFormatIsRefusedByName() throws Exception {
        String newer = Files.readString(library).replace("format=\"1\"", "format=\"2\"");
        WorkspaceException e = refused(newer.getBytes(StandardCharsets.UTF_8));
        assertEquals(FileProblem.NEWER_FORMAT, e.problem());
        assertTrue(e.getMessage().contains("format 2") && e.getMessage().contains("up to 1"), e.getMessage());
    }

    @Test
    void unknownFeatureAndBadNumberAreRefusedWithTheirPlace() throws Exception {
        String good = Files.readString(library);
        WorkspaceException e = refused(good.replace("pressForceKn=\"220.0\"", "pressForceKn=\"a lot\"")
                .getBytes(StandardCharsets.UTF_8));
        assertEquals(FileProblem.DAMAGED, e.problem());
        assertTrue(e.getMessage().contains("a lot"), e.getMessage());
        e = refused(good.replace("pressForceKn=", "pressForceOunces=").getBytes(StandardCharsets.UTF_8));
        assertTrue(e.getMessage().contains("pressForceOunces"), e.getMessage());
    }

    @Test
    void externalEntitiesAreNeverFetched() throws Exception {
        Path secret = folder.resolveSibling("secret.txt");
        Files.writeString(secret, "TOP SECRET");
        String evil = Files.readString(library).replaceFirst("\\?>\n",
                "?>\n<!DOCTYPE x [<!ENTITY leak SYSTEM \"" + secret.toUri() + "\">]>\n").replace("Test press", "&leak;");
        WorkspaceException e = refused(evil.getBytes(StandardCharsets.UTF_8));
        assertEquals(FileProblem.DOCTYPE, e.problem());
        assertFalse(e.getMessage().contains("TOP SECRET"));
        Files.delete(secret);
    }

    @Test
    void referencesOutOfTheWorkspaceAreNotFollowed() throws Exception {
        Path part = folder.resolve("parts/cover.pwpart");
        String original = Files.readString(part);
        for (String target : List.of("../../library.pwlib", "file:/etc/passwd", "http://127.0.0.1:9/library.pwlib",
                "archive:file:/x.zip!/library.pwlib", "platform:/resource/x/library.pwlib")) {
            Files.writeString(part, original.replace("../library.pwlib", target));
            try (Workspace workspace = Workspace.open(folder)) {
                assertTrue(workspace.parts().get(0).getMaterial().eIsProxy(), target);
                assertEquals(1, workspace.unresolved().stream().filter(u -> u.startsWith("cover.pwpart: material")).count(),
                        target);
            }
        }
    }

    @Test
    void oneBadPartDoesNotHideTheRest() throws Exception {
        Files.writeString(folder.resolve("parts/aa-broken.pwpart"), "<?xml version=\"1.0\"?><nothing");
        Files.copy(folder.resolve("orders/o-100.pworder"), folder.resolve("parts/misplaced.pwpart"));
        try (Workspace workspace = Workspace.open(folder)) {
            assertEquals(1, workspace.parts().size());
            assertEquals(List.of(FileProblem.DAMAGED, FileProblem.WRONG_ROOT),
                    workspace.problems().stream().map(WorkspaceException::problem).toList());
            assertTrue(workspace.problems().get(1).getMessage().contains("holds Order, but Item is expected"),
                    workspace.problems().get(1).getMessage());
        }
    }

    @Test
    void aReferenceInsideAFileThatLeadsNowhereIsAProblemNotADeadFile() throws Exception {
        String cut = Files.readString(library).replace("material=\"dc01\"", "material=\"gone\"");
        Files.writeString(library, cut);
        try (Workspace workspace = Workspace.open(folder)) {
            assertEquals(1, workspace.library().getStock().size());
            assertEquals(List.of(FileProblem.DANGLING), workspace.problems().stream().map(WorkspaceException::problem).toList());
            assertTrue(workspace.problems().get(0).getMessage().contains("gone"), workspace.problems().get(0).getMessage());
        }
    }

    @Test
    void missingFolderAndLibrary() {
        assertEquals(FileProblem.MISSING,
                assertThrows(WorkspaceException.class, () -> Workspace.open(folder.resolve("nowhere"))).problem());
        assertEquals(FileProblem.MISSING,
                assertThrows(WorkspaceException.class, () -> Workspace.open(folder.resolve("parts"))).problem());
    }

    @Test
    void pathsOfDrawingsStayInside() throws Exception {
        try (Workspace workspace = Workspace.open(folder)) {
            WorkspacePaths paths = workspace.paths();
            assertEquals(folder.resolve("drawings/cover.dxf"), paths.resolve("drawings/cover.dxf"));
            assertEquals(folder.resolve("drawings/cover.dxf"), paths.resolve("drawings/x/../cover.dxf"));
            Files.createSymbolicLink(folder.resolve("link"), folder.getParent());
            for (String bad : List.of("../x.dxf", "/etc/passwd", "C:/x.dxf", "drawings\\x.dxf", "", "drawings/../../x",
                    "link/x.dxf",
                    "a\u0000b")) {
                WorkspaceException e = assertThrows(WorkspaceException.class, () -> paths.resolve(bad), bad);
                assertEquals(FileProblem.OUTSIDE, e.problem());
            }
            Files.delete(folder.resolve("link"));
        }
    }
}
