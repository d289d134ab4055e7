// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Copies the checkout's demo shop so that a test may spoil it. */
final class DemoCopy {

    private DemoCopy() {
    }

    static void to(Path target) throws IOException {
        Path source = find();
        try (Stream<Path> all = Files.walk(source)) {
            List<Path> kept = all.filter(p -> !p.equals(source) && !p.startsWith(source.resolve("out"))
                    && !p.startsWith(source.resolve("plans")) && !p.getFileName().toString().startsWith(".")).toList();
            for (Path p : kept) {
                Files.copy(p, target.resolve(source.relativize(p).toString()));
            }
        }
    }

    private static Path find() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            if (Files.exists(at.resolve("demo-workspace/library.pwlib"))) {
                return at.resolve("demo-workspace");
            }
        }
        throw new IllegalStateException("demo-workspace is not above " + Path.of("").toAbsolutePath());
    }
}
