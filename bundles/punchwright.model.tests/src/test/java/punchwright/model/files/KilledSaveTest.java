// SPDX-License-Identifier: EPL-2.0
package punchwright.model.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.Samples;
import punchwright.model.shop.Tool;
import punchwright.model.shop.ToolShape;

/** A program that is killed at any moment of a save leaves a whole file behind, and the next program can write at once. */
class KilledSaveTest {

    /** How often a program is killed; more with {@code -Dpunchwright.kills=200}. */
    private static final int KILLS = Integer.getInteger("punchwright.kills", 5);
    private static final int TOOLS = 2000;

    @TempDir
    Path folder;

    /** The program that is killed: saves the library again and again, each time with one price on all tools. */
    static final class Saver {

        private Saver() {
        }

        public static void main(String[] args) throws Exception {
            try (Workspace workspace = Workspace.open(Path.of(args[0]))) {
                System.out.print('R');
                System.out.flush();
                for (double price = 1; ; price++) {
                    for (Tool tool : workspace.library().getTools()) {
                        tool.setPrice(price);
                    }
                    workspace.saveAll();
                }
            }
        }
    }

    @Test
    void theLibraryIsWholeAfterEveryKill() throws Exception {
        try (Workspace workspace = Workspace.create(folder, "Test shop", "EUR")) {
            for (int i = 0; i < TOOLS; i++) {
                workspace.library().getTools().add(Samples.tool("t" + i, ToolShape.ROUND, 5 + i * 0.1, 0));
            }
            workspace.saveAll();
        }
        Random random = new Random(5);
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        for (int kill = 0; kill < KILLS; kill++) {
            Process saver = new ProcessBuilder(java, "-Xshare:auto", "-cp", System.getProperty("java.class.path"),
                    Saver.class.getName(), folder.toString()).redirectErrorStream(true).start();
            assertEquals('R', saver.getInputStream().read(), "the saver did not start");
            Thread.sleep(random.nextInt(200));
            saver.destroyForcibly().waitFor();
            allToolsHaveOnePrice();
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(0, files.filter(f -> f.toString().endsWith(AtomicFiles.TEMPORARY)).count());
        }
    }

    private void allToolsHaveOnePrice() throws Exception {
        try (Workspace workspace = Workspace.open(folder)) {
            assertEquals(TOOLS, workspace.library().getTools().size());
            double price = workspace.library().getTools().get(0).getPrice();
            assertTrue(price >= 1);
            assertEquals(TOOLS, workspace.library().getTools().stream().filter(t -> t.getPrice() == price).count());
        }
    }
}
