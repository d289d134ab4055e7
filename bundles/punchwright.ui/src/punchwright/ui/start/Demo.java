// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.start;

import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.eclipse.core.runtime.Platform;

/** Where the demo lies: beside the program or in a folder above it. */
final class Demo {

    private static final String NAME = "demo-workspace";

    private Demo() {
    }

    static Optional<Path> folder() {
        URL install = Platform.getInstallLocation() == null ? null : Platform.getInstallLocation().getURL();
        if (install == null) {
            return Optional.empty();
        }
        try {
            for (Path at = Path.of(install.toURI()); at != null; at = at.getParent()) {
                if (Files.exists(at.resolve(NAME).resolve("library.pwlib"))) {
                    return Optional.of(at.resolve(NAME));
                }
            }
        } catch (URISyntaxException | IllegalArgumentException e) {
            return Optional.empty();
        }
        return Optional.empty();
    }
}
