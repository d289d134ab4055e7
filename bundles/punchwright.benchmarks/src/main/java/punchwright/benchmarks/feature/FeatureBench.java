// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.feature;

import java.io.ByteArrayInputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.LongStream;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.feature.FeatureRecognition;
import punchwright.engine.feature.FeatureSet;
import punchwright.synthetic.Miss;
import punchwright.synthetic.PartComparison;
import punchwright.synthetic.PartComparison.Tally;
import punchwright.synthetic.SyntheticPart;
import punchwright.synthetic.SyntheticParts;

/**
 * Generated parts through the whole chain: DXF text, reader, recognition, held against what was drawn. Options: --parts N
 * (10000), --seed N (1), --from N (0). Prints a table of kinds; gives 1 when anything is missed, 2 for options it does not know.
 */
public final class FeatureBench {

    private static final int MOST_SHOWN = 40;
    private static final String[] OPTIONS = {"--parts", "--seed", "--from"};

    private final PrintStream out;
    private final Map<String, Tally> tallies = new TreeMap<>();
    private final List<Miss> misses = new ArrayList<>();
    private long openings;
    private double readS;
    private double recogniseS;

    private FeatureBench(PrintStream out) {
        this.out = out;
    }

    /** @return exit code */
    public static int run(List<String> arguments, PrintStream out, PrintStream err) {
        long[] values = {10_000, 1, 0};
        for (int i = 0; i < arguments.size(); i += 2) {
            int option = List.of(OPTIONS).indexOf(arguments.get(i));
            if (option < 0 || i + 1 == arguments.size() || !arguments.get(i + 1).matches("\\d{1,15}")) {
                err.println("bench features: \"" + arguments.get(i) + "\" needs to be one of " + String.join(", ", OPTIONS)
                        + ", each with a whole number");
                return 2;
            }
            values[option] = Long.parseLong(arguments.get(i + 1));
        }
        FeatureBench bench = new FeatureBench(out);
        LongStream.range(values[2], values[2] + values[0]).forEach(n -> bench.part(SyntheticParts.part(values[1], n)));
        bench.print(values[0], values[1]);
        LargeField.print(out);
        try {
            ManyParts.print(out);
        } catch (DrawingException e) {
            err.println("bench features: " + e.getMessage());
            return 1;
        }
        return bench.misses.isEmpty() ? 0 : 1;
    }

    private void part(SyntheticPart part) {
        try {
            long start = System.nanoTime();
            DrawingResult read = DrawingReader.read(new ByteArrayInputStream(part.dxf().getBytes(StandardCharsets.US_ASCII)),
                    "part", DrawingOptions.USUAL);
            long between = System.nanoTime();
            FeatureSet found = FeatureRecognition.recognise("part", read.shapes().get(0));
            recogniseS += (System.nanoTime() - between) / 1e9;
            readS += (between - start) / 1e9;
            openings += part.openings().size();
            if (read.shapes().size() != 1) {
                misses.add(new Miss("PART", "part " + part.number() + ": " + read.shapes().size() + " parts read"));
            }
            misses.addAll(PartComparison.compare(part, found, tallies));
        } catch (DrawingException e) {
            misses.add(new Miss("PART", "part " + part.number() + ": " + e.getMessage()));
        }
    }

    private void print(long parts, long seed) {
        out.printf("%,d parts of seed %d, %,d openings%n", parts, seed, openings);
        out.printf("%-18s %9s %11s %9s %14s %14s%n", "kind", "drawn", "recognised", "per cent", "size off mm", "radius off mm");
        tallies.forEach((kind, t) -> out.printf("%-18s %,9d %,11d %9.3f %14.5f %14.5f%n", kind, t.drawn(), t.recognised(),
                100.0 * t.recognised() / t.drawn(), t.worstMm(), t.worstRadiusMm()));
        out.printf("mean time of a part: read %.2f ms, recognised %.2f ms (%.3f ms an opening)%n", 1e3 * readS / parts,
                1e3 * recogniseS / parts, 1e3 * recogniseS / openings);
        out.printf("missed: %,d%n", misses.size());
        misses.stream().limit(MOST_SHOWN).forEach(m -> out.println("  " + m.text()));
    }
}
