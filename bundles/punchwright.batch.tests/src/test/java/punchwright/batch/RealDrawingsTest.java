// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import com.google.gson.JsonParser;

import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A folder of real drawings, good, damaged and hostile, goes through the command as a whole: one record a file, whatever is in
 * it.
 */
class RealDrawingsTest {

    /** Every this many-th good drawing, for reading is held file by file in the engine; all with {@code =1}. */
    private static final int EVERY = Integer.getInteger("punchwright.everyDrawing", 12);

    @TempDir
    private Path some;

    private static Path data(String name) {
        String stated = System.getenv("PUNCHWRIGHT_DATA");
        for (Path p = Path.of("").toAbsolutePath(); stated == null && p != null; p = p.getParent()) {
            stated = Files.isDirectory(p.resolve("../shared/data")) ? p.resolve("../shared/data").normalize().toString() : null;
        }
        Path folder = stated == null ? null : Path.of(stated, name);
        Assumptions.assumeTrue(folder != null && Files.isDirectory(folder), "skipped, no data");
        return folder;
    }

    private static List<Path> drawings(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(f -> f.toString().toLowerCase(Locale.ROOT).endsWith(".dxf")).sorted().toList();
        }
    }

    private static void oneRecordEach(Path folder) throws IOException {
        Set<String> files = new TreeSet<>(drawings(folder).stream().map(Path::toString).toList());
        assertFalse(files.isEmpty(), folder.toString());
        Shell shell = new Shell();
        int code = shell.run("import", "--json", "--quiet", folder.toString());
        assertFalse(code == 2 || code == 4, "exit code " + code + ": " + shell.err());
        List<String> lines = shell.out().lines().toList();
        assertEquals(files, new TreeSet<>(lines.stream().map(l -> JsonParser.parseString(l).getAsJsonObject().get("file")
                .getAsString()).toList()));
        assertEquals(files.size(), lines.size());
    }

    @Test
    void realDrawings() throws IOException {
        Path folder = data("dxf");
        List<Path> all = drawings(folder);
        for (int i = 0; i < all.size(); i += EVERY) {
            Path copy = some.resolve(folder.relativize(all.get(i)).toString());
            Files.createDirectories(copy.getParent());
            Files.copy(all.get(i), copy);
        }
        oneRecordEach(some);
    }

    @Test
    void hostileDrawings() throws IOException {
        oneRecordEach(data("nasty"));
    }
}
