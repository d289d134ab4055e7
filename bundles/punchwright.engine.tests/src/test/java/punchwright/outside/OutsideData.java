// SPDX-License-Identifier: EPL-2.0
package punchwright.outside;

import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Assumptions;

/**
 * Drawings and published instances that are not part of the repository: PUNCHWRIGHT_DATA, or shared/data beside the checkout.
 */
public final class OutsideData {

    private OutsideData() {
    }

    /** The folder; the test is skipped without it. */
    public static Path folder(String name) {
        String stated = System.getenv("PUNCHWRIGHT_DATA");
        Path at = stated != null ? Path.of(stated) : beside(Path.of("").toAbsolutePath());
        Path folder = at == null ? null : at.resolve(name);
        Assumptions.assumeTrue(folder != null && Files.isDirectory(folder), "skipped, no data");
        return folder;
    }

    private static Path beside(Path start) {
        for (Path p = start; p != null; p = p.getParent()) {
            if (Files.isDirectory(p.resolve("../shared/data"))) {
                return p.resolve("../shared/data").normalize();
            }
        }
        return null;
    }
}
