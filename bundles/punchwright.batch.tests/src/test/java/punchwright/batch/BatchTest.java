// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Exit codes and streams of the command line. */
class BatchTest {

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private int run(String... arguments) {
        return new Batch(stream(out), stream(err)).run(arguments);
    }

    private static PrintStream stream(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    @Test
    void helpGoesToOutAndIsASuccess() {
        assertEquals(Batch.DONE, run("--help"));
        assertTrue(out.toString(StandardCharsets.UTF_8).startsWith("Usage:"));
        assertEquals("", err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void unknownWordsAreNamedOnTheErrorStream() {
        assertEquals(Batch.USAGE, run("frobnicate"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("frobnicate"));
        assertEquals("", out.toString(StandardCharsets.UTF_8));
    }

    @Test
    void noWordsAtAllAreAnError() {
        assertEquals(Batch.USAGE, run());
    }
}
