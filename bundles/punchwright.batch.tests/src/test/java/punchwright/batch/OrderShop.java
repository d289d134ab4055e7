// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A copy of the demo shop with one small order, and the command line on it. */
final class OrderShop {

    private final Path folder;
    private final Shell shell = new Shell();

    OrderShop(Path parent) throws IOException {
        folder = Files.createDirectory(parent.resolve("shop"));
        DemoCopy.to(folder);
        SmallOrder.write(folder, 3, " received=\"2026-11-02\"");
    }

    Path folder() {
        return folder;
    }

    /** What the last command printed. */
    Shell shell() {
        return shell;
    }

    int run(String... words) {
        return shell.run(Stream.concat(Stream.of("--workspace", folder.toString(), "--quiet"), Stream.of(words))
                .toArray(String[]::new));
    }
}
