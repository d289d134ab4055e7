// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.sequence;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import punchwright.engine.sequence.ClosedTour;
import punchwright.engine.sequence.TourBound;

/** The search for the order of hits on published routing instances. */
public final class SequenceBench {

    private record Result(int nodes, double optimum, double ours, double bound, double seconds, boolean valid) {
    }

    private static final int NEAREST = 10;
    private static final int BOUND_STEPS = 30_000;
    private static final int BETWEEN_LOOKS_AT_THE_CLOCK = 16;

    private final SequenceOptions options;
    private final PrintStream out;
    private final List<Result> results = new ArrayList<>();
    private final Map<Path, Map<String, Double>> optima = new LinkedHashMap<>();

    private SequenceBench(SequenceOptions options, PrintStream out) {
        this.options = options;
        this.out = out;
    }

    /** Runs; returns the exit code: 0, 1 when a tour is not valid or beats a published optimum, 2 for wrong arguments, 3 for files. */
    public static int run(List<String> arguments, PrintStream out, PrintStream err) {
        SequenceOptions options;
        try {
            options = SequenceOptions.of(arguments);
        } catch (IllegalArgumentException e) {
            err.println(e.getMessage());
            err.println(SequenceOptions.USAGE);
            return 2;
        }
        SequenceBench bench = new SequenceBench(options, out);
        boolean read = true;
        for (Path path : options.paths()) {
            read &= bench.path(path, err);
        }
        bench.table();
        return !read ? 3 : bench.results.stream().allMatch(Result::valid) ? 0 : 1;
    }

    private boolean path(Path path, PrintStream err) {
        boolean read = true;
        try {
            for (Path file : files(path)) {
                try {
                    RoutingFile instance = RoutingFile.read(file);
                    Result result = solve(instance, optimum(file, instance.name()));
                    results.add(result);
                    out.println(line(instance, result));
                } catch (IOException e) {
                    err.println(e.getMessage());
                    read = false;
                }
            }
        } catch (IOException e) {
            err.println(path + " cannot be read: " + e.getMessage());
            return false;
        }
        return read;
    }

    private static List<Path> files(Path path) throws IOException {
        if (!Files.isDirectory(path)) {
            return List.of(path);
        }
        try (Stream<Path> files = Files.list(path)) {
            return files.filter(f -> f.toString().endsWith(".tsp")).sorted(Comparator.comparing(Path::toString)).toList();
        }
    }

    /** From a list {@code name : length} called {@code solutions} beside the file. */
    private double optimum(Path file, String name) throws IOException {
        Path list = file.toAbsolutePath().resolveSibling("solutions");
        Map<String, Double> known = optima.get(list);
        if (known == null) {
            known = new LinkedHashMap<>();
            for (String l : Files.exists(list) ? Files.readAllLines(list, StandardCharsets.ISO_8859_1) : List.<String>of()) {
                String[] f = l.split(":");
                if (f.length > 1 && f[1].trim().matches("\\d+.*")) {
                    known.put(f[0].trim(), Double.valueOf(f[1].trim().split("\\s+")[0]));
                }
            }
            optima.put(list, known);
        }
        return known.getOrDefault(name, Double.NaN);
    }

    private Result solve(RoutingFile f, double optimum) {
        long start = processorNanos();
        long end = start + (long) (options.seconds() * 1e9);
        int[][] neighbours = Weights.isPlane(f.costs()) ? ClosedTour.neighbours(f.costs(), f.x(), f.y()) : nearest(f);
        int[] kicks = new int[1];
        BooleanSupplier stop = () -> ++kicks[0] % BETWEEN_LOOKS_AT_THE_CLOCK == 0 && processorNanos() > end;
        int[] tour = ClosedTour.of(f.costs(), neighbours, f.partner(), Long.MAX_VALUE, options.seed(), stop);
        double seconds = (processorNanos() - start) / 1e9;
        double ours = f.length(tour);
        double bound = f.size() > options.boundUpTo() ? Double.NaN : bound(f, neighbours);
        boolean valid = IntStream.of(tour).distinct().count() == f.size() && tour.length == f.size() && !(ours < optimum - 0.5)
                && !(bound > optimum + 1e-6);
        return new Result(f.size(), optimum, ours, bound, seconds, valid);
    }

    private static double bound(RoutingFile f, int[][] neighbours) {
        double bound = Weights.isPlane(f.costs()) ? TourBound.closed(f.costs(), f.x(), f.y(), BOUND_STEPS)
                : TourBound.closed(f.costs(), f.x(), f.y(), neighbours, BOUND_STEPS);
        return Math.ceil(bound - 1e-6);
    }

    private static int[][] nearest(RoutingFile f) {
        return IntStream.range(0, f.size()).mapToObj(i -> IntStream.range(0, f.size()).filter(j -> j != i).boxed()
                .sorted(Comparator.comparingDouble((Integer j) -> f.costs().cost(i, j))).limit(NEAREST)
                .mapToInt(Integer::intValue).toArray()).toArray(int[][]::new);
    }

    /** Processor time of this thread: the same on a busy machine. */
    private static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static String line(RoutingFile f, Result r) {
        JsonObject json = new JsonObject();
        json.addProperty("name", f.name());
        json.addProperty("nodes", r.nodes());
        known(json, "best", r.optimum());
        json.addProperty("ours", r.ours());
        known(json, "above_per_cent", 100 * (r.ours() / r.optimum() - 1));
        known(json, "bound", r.bound());
        known(json, "bound_of_best_per_cent", 100 * r.bound() / r.optimum());
        json.addProperty("seconds", round(r.seconds()));
        json.addProperty("valid", r.valid());
        return json.toString();
    }

    private static void known(JsonObject json, String name, double value) {
        if (!Double.isNaN(value)) {
            json.addProperty(name, round(value));
        }
    }

    private static double round(double v) {
        return Math.round(v * 1e3) / 1e3;
    }

    private void table() {
        out.printf(Locale.ROOT, "%-16s %9s %6s %14s %15s %15s %9s%n", "nodes", "instances", "valid", "mean above, %",
                "worst above, %", "mean bound, %", "seconds");
        int[] limits = {100, 500, 1000, 2000, 6000, Integer.MAX_VALUE};
        int from = 0;
        for (int to : limits) {
            int low = from;
            row(to == Integer.MAX_VALUE ? "above " + low : low + 1 + " to " + to,
                    results.stream().filter(r -> r.nodes() > low && r.nodes() <= to).toList());
            from = to;
        }
        row("up to 6000", results.stream().filter(r -> r.nodes() <= 6000).toList());
    }

    private void row(String name, List<Result> rows) {
        if (rows.isEmpty()) {
            return;
        }
        double[] above = rows.stream().mapToDouble(r -> 100 * (r.ours() / r.optimum() - 1)).filter(v -> !Double.isNaN(v)).toArray();
        double[] bounds = rows.stream().mapToDouble(r -> 100 * r.bound() / r.optimum()).filter(v -> !Double.isNaN(v)).toArray();
        out.printf(Locale.ROOT, "%-16s %9d %6d %14s %15s %15s %9.1f%n", name, rows.size(),
                rows.stream().filter(Result::valid).count(), figure(java.util.Arrays.stream(above).average().orElse(Double.NaN)),
                figure(java.util.Arrays.stream(above).max().orElse(Double.NaN)),
                figure(java.util.Arrays.stream(bounds).average().orElse(Double.NaN)),
                rows.stream().mapToDouble(Result::seconds).sum());
    }

    private static String figure(double v) {
        return Double.isNaN(v) ? "-" : String.format(Locale.ROOT, "%.3f", v);
    }
}
