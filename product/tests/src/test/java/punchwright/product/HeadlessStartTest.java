// SPDX-License-Identifier: EPL-2.0
package punchwright.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The product of this machine's own system, started through its start script without a display. */
class HeadlessStartTest {

    private record Run(int exitCode, String out, String err) {
    }

    /** A start takes 1.5 s on an idle machine; a busy one may need many times that. */
    private static final int LONGEST_S = 180;

    @TempDir
    private Path folder;

    private Run start(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(script().toString(), "batch"));
        command.addAll(List.of(arguments));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().remove("DISPLAY");
        builder.environment().put("LC_ALL", "C");
        Process process = builder.start();
        if (!process.waitFor(LONGEST_S, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("still running after " + LONGEST_S + " s: " + command);
        }
        return new Run(process.exitValue(), Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    private static Path script() {
        String os = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("mac") ? "macosx" : "linux";
        String arch = System.getProperty("os.arch").equals("amd64") ? "x86_64" : System.getProperty("os.arch");
        Path script = BuiltProduct.ALL.stream().filter(p -> p.os().equals(os) && p.arch().equals(arch)).findFirst()
                .map(p -> p.root().resolve("punchwright")).orElseThrow();
        assumeTrue(Files.isExecutable(script) && !System.getProperty("os.name").startsWith("Windows"),
                "the script is for Linux and macOS");
        return script.toAbsolutePath();
    }

    @Test
    void versionIsPrintedAndNothingElse() throws IOException, InterruptedException {
        Run run = start("--version");
        assertEquals(0, run.exitCode(), run.err());
        assertTrue(run.out().matches("Punchwright \\d+\\.\\d+\\.\\d+\\R"), run.out());
        assertEquals("", run.err());
    }

    @Test
    void exitCodeOfTheApplicationReachesTheCaller() throws IOException, InterruptedException {
        Run run = start("no-such-operation");
        assertEquals(2, run.exitCode(), run.err());
        assertTrue(run.err().contains("no-such-operation"), run.err());
    }
}
