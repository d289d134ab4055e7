// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The layout search on published instances. */
public final class LayoutBench {

    private static final class Sum {
        private int instances;
        private int valid;
        private double ours;
        private double bound;
        private double best;
        private double gap;
        private int gaps;
        private double seconds;
    }

    private LayoutBench() {
    }

    /** Runs; returns the exit code: 0, 1 when a result is not valid, 2 for wrong arguments or files. */
    public static int run(List<String> arguments, PrintStream out, PrintStream err) {
        Map<String, Sum> table = new LinkedHashMap<>();
        try {
            Options options = Options.of(arguments);
            for (Path path : options.paths()) {
                for (Instance i : Instances.read(path)) {
                    Instance.Outcome o = i.run(options.seconds(), options.seed(), options.turn());
                    out.println(line(i, o));
                    add(table.computeIfAbsent(i.group(), g -> new Sum()), o);
                }
            }
        } catch (IllegalArgumentException | IOException e) {
            err.println(e.getMessage());
            err.println(Options.USAGE);
            return 2;
        }
        print(table, out);
        return table.values().stream().allMatch(s -> s.valid == s.instances) ? 0 : 1;
    }

    /** Processor time of this thread: the same on a busy machine. */
    static long processorNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static String line(Instance i, Instance.Outcome o) {
        JsonObject json = new JsonObject();
        json.addProperty("name", i.name());
        if (!Double.isNaN(o.best())) {
            json.addProperty("best", round(o.best()));
        }
        json.addProperty("ours", round(o.ours()));
        json.addProperty("bound", round(o.bound()));
        if (!Double.isNaN(o.density())) {
            json.addProperty("density", round(o.density()));
        }
        json.addProperty("seconds", round(o.seconds()));
        json.addProperty("valid", o.valid().isEmpty());
        if (!o.valid().isEmpty()) {
            json.addProperty("fault", o.valid());
        }
        return json.toString();
    }

    private static double round(double v) {
        return Math.round(v * 1e4) / 1e4;
    }

    private static void add(Sum s, Instance.Outcome o) {
        s.instances++;
        s.valid += o.valid().isEmpty() ? 1 : 0;
        s.ours += o.ours();
        s.bound += o.bound();
        s.seconds += o.seconds();
        if (!Double.isNaN(o.best())) {
            s.best += o.best();
            s.gap += o.density() * (o.ours() / o.best() - 1);
            s.gaps++;
        }
    }

    private static void print(Map<String, Sum> table, PrintStream out) {
        out.printf(Locale.ROOT, "%-14s %9s %6s %12s %12s %16s %9s%n", "group", "instances", "valid", "ours", "bound",
                "points below best", "seconds");
        table.forEach((group, s) -> out.printf(Locale.ROOT, "%-14s %9d %6d %12.2f %12.2f %17s %9.1f%n", group, s.instances,
                s.valid, s.ours, s.bound, s.gaps == 0 ? "-" : String.format(Locale.ROOT, "%.2f", s.gap / s.gaps), s.seconds));
    }
}
