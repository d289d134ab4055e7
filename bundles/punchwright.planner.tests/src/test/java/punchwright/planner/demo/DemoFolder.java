// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Finds the demo shop from wherever a test runs, and copies it so that tests may change it. */
public final class DemoFolder {

    private DemoFolder() {
    }

    /** The folder {@code demo-workspace} of the checkout. */
    public static Path find() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            if (Files.exists(at.resolve("demo-workspace/library.pwlib"))) {
                return at.resolve("demo-workspace");
            }
        }
        throw new IllegalStateException("demo-workspace is not above " + Path.of("").toAbsolutePath());
    }

    /** A copy without what was written for others. */
    public static Path copyTo(Path target) {
        Path source = find();
        try (Stream<Path> all = Files.walk(source)) {
            List<Path> kept = all.filter(p -> !p.startsWith(source.resolve("out"))
                    && !p.getFileName().toString().startsWith(".")).toList();
            for (Path p : kept) {
                Path to = target.resolve(source.relativize(p).toString());
                if (Files.isDirectory(p)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(p, to);
                }
            }
            return target;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
