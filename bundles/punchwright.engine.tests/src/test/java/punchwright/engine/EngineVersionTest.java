// SPDX-License-Identifier: EPL-2.0
package punchwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.Manifest;
import org.junit.jupiter.api.Test;

/** The version a plan states is the version that is built. */
class EngineVersionTest {

    @Test
    void textEqualsTheBundleVersion() throws IOException {
        try (InputStream in = Files.newInputStream(Path.of("..", "punchwright.engine", "META-INF", "MANIFEST.MF"))) {
            String version = new Manifest(in).getMainAttributes().getValue("Bundle-Version");
            assertEquals(EngineVersion.TEXT + ".qualifier", version);
        }
    }
}
