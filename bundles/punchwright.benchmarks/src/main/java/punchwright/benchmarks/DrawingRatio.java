// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.dxf.DxfFile;
import punchwright.engine.finding.FindingCollector;

/**
 * Reads the same large drawing here and with Debian's python3-ezdxf, in one run on one machine, and prints the ratio. Start
 * it with a heap of 950 MB; argument: size in millions of bytes, 100 without one. Times are wall clock; the best of three
 * here, one run there.
 */
public final class DrawingRatio {

    private static final String OTHER =
            "import ezdxf,sys,time\nt=time.time()\nd=ezdxf.readfile(sys.argv[1])\nn=len(d.modelspace())\nprint(time.time()-t)";

    private DrawingRatio() {
    }

    public static void main(String[] arguments) throws Exception {
        long megabytes = arguments.length > 0 ? Long.parseLong(arguments[0]) : 100;
        Path file = Files.createTempFile("large", ".dxf");
        try {
            LargeDrawing.write(file, megabytes * 1_000_000);
            double curves = best(() -> curves(file));
            double parts = best(() -> DrawingReader.read(file, DrawingOptions.USUAL).shapes().size());
            double other = other(file);
            System.out.printf("%d MB, heap at most %d MB%n", megabytes, Runtime.getRuntime().maxMemory() / 1_000_000);
            System.out.printf("%-28s %10s %8s%n", "", "time s", "ratio");
            System.out.printf("%-28s %10.2f %8.1f%n", "other reader, entities", other, 1.0);
            System.out.printf("%-28s %10.2f %8.1f%n", "here, entities and curves", curves, other / curves);
            System.out.printf("%-28s %10.2f %8.1f%n", "here, part shapes", parts, other / parts);
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private static int curves(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return DxfFile.read(in, DrawingOptions.USUAL.mostCurves(), new FindingCollector("large", 20)).curves().size();
        }
    }

    private static double best(Callable<Integer> work) throws Exception {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            long start = System.nanoTime();
            if (work.call() == 0) {
                throw new IllegalStateException("nothing was read");
            }
            best = Math.min(best, (System.nanoTime() - start) / 1e9);
        }
        return best;
    }

    private static double other(Path file) throws IOException, InterruptedException {
        Process process = new ProcessBuilder("/usr/bin/python3", "-c", OTHER, file.toString()).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        if (process.waitFor() != 0) {
            throw new IllegalStateException("python3-ezdxf is needed for the comparison: " + said);
        }
        return Double.parseDouble(said);
    }
}
