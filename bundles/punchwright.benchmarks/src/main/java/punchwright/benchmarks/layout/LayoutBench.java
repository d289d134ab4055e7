// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** The layout search on published instances. */
public final class LayoutBench {

    private final Options options;
    private final PrintStream out;
    private final PrintStream err;
    private final ResultTable table;
    private boolean failed;

    private LayoutBench(Options options, PrintStream out, PrintStream err) {
        this.options = options;
        this.out = out;
        this.err = err;
        table = new ResultTable(options.turn());
    }

    /** Runs; returns the exit code: 0, 1 when a result is not valid, 2 for wrong arguments, files or instances. */
    public static int run(List<String> arguments, PrintStream out, PrintStream err) {
        if (arguments.contains("--bars")) {
            return BarBench.run(arguments, out, err);
        }
        try {
            return new LayoutBench(Options.of(arguments), out, err).run();
        } catch (IllegalArgumentException e) {
            err.println(e instanceof InvalidPathException ? "no path: " + e.getMessage() : e.getMessage());
            err.println(Options.USAGE);
            err.println(BarBench.USAGE);
            return 2;
        }
    }

    private int run() {
        for (Path path : options.paths()) {
            List<Path> files;
            try {
                files = Instances.files(path);
                if (files.isEmpty()) {
                    fail(path + " holds no .json, .xml or .txt file");
                }
            } catch (IOException | java.io.UncheckedIOException e) {
                fail(path + " cannot be listed: " + e.getMessage());
                continue;
            }
            files.forEach(this::file);
        }
        table.print(out);
        return !table.allValid() ? 1 : failed ? 2 : 0;
    }

    private void fail(String message) {
        failed = true;
        err.println(message.replaceAll("\\s*\\R\\s*", " "));
    }

    private void file(Path file) {
        List<Instance> instances;
        try {
            instances = Instances.read(file);
        } catch (IOException e) {
            fail(e.getMessage());
            return;
        }
        for (Instance i : instances) {
            try {
                Instance.Outcome o = i.run(options.seconds(), options.seed(), options.turn());
                out.println(line(i, o));
                table.add(i.group(), o);
            } catch (IllegalArgumentException e) {
                fail(file + ", " + i.name() + ": " + e.getMessage());
            } catch (RuntimeException e) {
                fail(file + ", " + i.name() + ": " + e);
            }
        }
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
}
