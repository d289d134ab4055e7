// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonObject;
import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import punchwright.engine.nesting.bars.BarPlan;
import punchwright.engine.nesting.bars.BarSearch;
import punchwright.engine.nesting.boxes.Work;

/** Seeded orders along bars: cost, bound, and how often the bound proves the plan. */
final class BarBench {

    static final String USAGE = "bench layout --bars [--cases N] [--seed N]\n"
            + "  --cases N    number of seeded cases, default 300\n"
            + "  --seed N     first seed, default 1";

    /** Work of one plan, as in a plan of an order. */
    private static final long WORK = 40_000_000;

    private static final class Sum {
        private int cases;
        private int valid;
        private int proven;
        private double gap;
        private double seconds;
        private double longest;
    }

    private BarBench() {
    }

    /** Runs; returns the exit code: 0, 1 when a plan is not valid, 2 for wrong arguments. */
    static int run(List<String> arguments, PrintStream out, PrintStream err) {
        long cases = 300;
        long seed = 1;
        try {
            for (int i = 0; i < arguments.size(); i++) {
                switch (arguments.get(i)) {
                    case "--bars" -> { }
                    case "--cases" -> cases = number(arguments, ++i);
                    case "--seed" -> seed = number(arguments, ++i);
                    default -> throw new IllegalArgumentException("unknown argument " + arguments.get(i));
                }
            }
        } catch (IllegalArgumentException e) {
            err.println(e.getMessage());
            err.println(USAGE);
            return 2;
        }
        Map<String, Sum> table = new LinkedHashMap<>();
        for (long s = seed; s < seed + cases; s++) {
            one(s, table, out);
        }
        print(table, out);
        return table.values().stream().allMatch(s -> s.valid == s.cases) ? 0 : 1;
    }

    private static long number(List<String> arguments, int i) {
        long value;
        try {
            value = i < arguments.size() ? Long.parseLong(arguments.get(i)) : 0;
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(arguments.get(i - 1) + " needs a number, not " + arguments.get(i), e);
        }
        if (value < 1) {
            throw new IllegalArgumentException(arguments.get(i - 1) + " needs a number from 1 up");
        }
        return value;
    }

    private static void one(long seed, Map<String, Sum> table, PrintStream out) {
        BarCase c = BarCase.of(seed);
        long start = LayoutBench.processorNanos();
        BarPlan plan = BarSearch.solve(c.problem(), new Work(WORK));
        double seconds = (LayoutBench.processorNanos() - start) / 1e9;
        String fault = plan == null ? "no plan found" : c.check(plan);
        JsonObject json = new JsonObject();
        json.addProperty("name", c.group() + " " + seed);
        json.addProperty("parts", c.problem().demand().length);
        if (plan != null) {
            json.addProperty("ours", round(plan.cost()));
            json.addProperty("bound", round(plan.bound()));
            json.addProperty("proven", plan.proven());
        }
        json.addProperty("seconds", round(seconds));
        json.addProperty("valid", fault.isEmpty());
        if (!fault.isEmpty()) {
            json.addProperty("fault", fault);
        }
        out.println(json);
        add(table.computeIfAbsent(c.group(), g -> new Sum()), plan, fault, seconds);
        add(table.computeIfAbsent("all", g -> new Sum()), plan, fault, seconds);
    }

    private static double round(double v) {
        return Math.round(v * 1e4) / 1e4;
    }

    private static void add(Sum s, BarPlan plan, String fault, double seconds) {
        s.cases++;
        s.valid += fault.isEmpty() ? 1 : 0;
        s.proven += plan != null && plan.proven() ? 1 : 0;
        s.gap += plan == null ? 0 : 100 * (plan.cost() / plan.bound() - 1);
        s.seconds += seconds;
        s.longest = Math.max(s.longest, seconds);
    }

    private static void print(Map<String, Sum> table, PrintStream out) {
        out.printf(Locale.ROOT, "%-12s %6s %6s %7s %8s %10s %9s %9s%n", "group", "cases", "valid", "proven", "share %",
                "mean gap %", "mean s", "longest s");
        table.forEach((group, s) -> out.printf(Locale.ROOT, "%-12s %6d %6d %7d %8.1f %10.5f %9.3f %9.2f%n", group, s.cases,
                s.valid, s.proven, 100.0 * s.proven / s.cases, s.gap / s.cases, s.seconds / s.cases, s.longest));
    }
}
