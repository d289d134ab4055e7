// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.drawing.dxf.DxfFile;
import punchwright.engine.drawing.dxf.RawDrawing;
import punchwright.engine.finding.FindingCollector;

/** Reading a large drawing, to its curves and to its parts, in a heap below 1 GB. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2)
@Measurement(iterations = 5)
@Fork(value = 1, jvmArgsAppend = "-Xmx950m")
public class DrawingBenchmark {

    /** Size of the text in millions of bytes. */
    @Param("100")
    public int megabytes;

    private Path file;

    @Setup
    public void write() throws IOException {
        file = Files.createTempFile("large", ".dxf");
        LargeDrawing.write(file, megabytes * 1_000_000L);
    }

    @TearDown
    public void delete() throws IOException {
        Files.deleteIfExists(file);
    }

    /** What other readers call reading: the entities with their geometry and layer. */
    @Benchmark
    public RawDrawing toCurves() throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return DxfFile.read(in, DrawingOptions.USUAL.mostCurves(), new FindingCollector("large", 20));
        }
    }

    /** The whole way to part shapes, crossings and nesting checked. */
    @Benchmark
    public DrawingResult toParts() throws DrawingException {
        return DrawingReader.read(file, DrawingOptions.USUAL);
    }
}
