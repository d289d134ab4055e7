// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.choice;

import com.sun.management.OperatingSystemMXBean;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.WayOut;
import punchwright.engine.press.HeadKind;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.OrderChoice;
import punchwright.engine.tooling.OrderPart;
import punchwright.engine.tooling.OrderSelection;
import punchwright.engine.tooling.ToolChoice;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.engine.tooling.ToolWishes;
import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Solution;
import punchwright.engine.tooling.setup.SetupSolver;

/**
 * The choice of tools on seeded parts and orders: ours whole, from features to the choice, and the arithmetic alone by ours and
 * by the libraries compared. Times are processor time of the whole program, so that a busy machine and helping threads count
 * rightly.
 */
public final class ChoiceBench {

    static final String USAGE = "bench choice [--seed N] [--cases N] [--parts N] [--solvers | --refused]\n"
            + "  --seed N    first seed, default 1\n"
            + "  --cases N   cases, default 20\n"
            + "  --parts N   parts of an order, default 40\n"
            + "  --solvers   compare the libraries on the arithmetic alone instead (minutes)\n"
            + "  --refused   parts of which little or nothing can be made instead, without and with the nearest ways out";
    /** Sheets that ask for some dies too wide, and for dies and punches that hardly any tool has. */
    private static final double[] THICK_MM = { 4, 6, 7.9 };
    private static final int TOOLS = 300;
    private static final int OPENINGS = 56;
    private static final int OPENINGS_IN_ORDER = 20;
    private static final double SHEETS = 20;
    /** Work allowed to a contender: deterministic seconds of CP-SAT, seconds of ojAlgo alone, 2000 nodes of Choco a unit. */
    private static final double WORK = 5;

    private final PrintStream out;
    private final Map<String, List<double[]>> rows = new LinkedHashMap<>();

    private ChoiceBench(PrintStream out) {
        this.out = out;
    }

    /** Runs; returns the exit code: 0, 1 when a target is missed, 2 for wrong arguments. */
    public static int run(List<String> arguments, PrintStream out, PrintStream err) {
        long seed = 1;
        int cases = 20;
        int parts = 40;
        boolean solvers = false;
        boolean refused = false;
        try {
            for (int i = 0; i < arguments.size(); i++) {
                switch (arguments.get(i)) {
                    case "--seed" -> seed = Long.parseLong(arguments.get(++i));
                    case "--cases" -> cases = Integer.parseInt(arguments.get(++i));
                    case "--parts" -> parts = Integer.parseInt(arguments.get(++i));
                    case "--solvers" -> solvers = true;
                    case "--refused" -> refused = true;
                    default -> throw new IllegalArgumentException("unknown option " + arguments.get(i));
                }
            }
        } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
            err.println(e.getMessage());
            err.println(USAGE);
            return 2;
        }
        ChoiceBench bench = new ChoiceBench(out);
        if (refused) {
            bench.refused(0, 3);
            bench.rows.clear();
            bench.refused(seed, cases);
            bench.print();
            return 0;
        }
        bench.ours(0, 3, parts);
        bench.rows.clear();
        if (solvers) {
            bench.solvers(seed, cases, parts);
            bench.print();
            return 0;
        }
        bench.ours(seed, cases, parts);
        bench.print();
        return bench.missed() ? 1 : 0;
    }

    private static SeededShop shop(long seed) {
        return new SeededShop(seed, TOOLS, seed % 2 == 0 ? HeadKind.TURRET : HeadKind.SINGLE_HEAD);
    }

    private void ours(long seed, int cases, int parts) {
        for (long s = seed; s < seed + cases; s++) {
            OrderPart part = shop(s).part("part", OPENINGS, 20);
            double start = seconds();
            ToolWeighing w = ToolChoice.price(part.job(), ChoiceWeights.USUAL, ToolWishes.NONE);
            add("part of 60 features", seconds() - start, w.costSeconds(), w.boundSeconds());
            List<OrderPart> order = shop(s).order(parts, OPENINGS_IN_ORDER);
            start = seconds();
            OrderSelection o = OrderChoice.choose(order, shop(s).readiness(SHEETS), ChoiceWeights.USUAL);
            add("order of " + parts + " parts", seconds() - start, o.costSeconds(), o.boundSeconds());
        }
    }

    /** Parts in thick sheet, chosen without and with looking for ways out; the difference is what looking costs. */
    private void refused(long seed, int cases) {
        for (double thickness : THICK_MM) {
            int none = 0;
            int found = 0;
            for (long s = seed; s < seed + cases; s++) {
                SeededShop shop = shop(s);
                OrderPart part = shop.part("part", OPENINGS, 20);
                for (boolean asked : new boolean[] { false, true }) {
                    double start = seconds();
                    List<Finding> errors = ToolChoice.choose(shop.thick(part, thickness, asked)).findings().stream()
                            .filter(Finding::isError).toList();
                    add(thickness + " mm, " + (asked ? "ways out" : "reasons alone"), seconds() - start, 1, 1);
                    none += asked ? errors.size() : 0;
                    found += asked ? (int) errors.stream().filter(f -> f.waysOut().stream().anyMatch(WayOut::found)).count() : 0;
                }
            }
            out.printf(Locale.ROOT, "%.1f mm: %d refusals, %d with a way out%n", thickness, none, found);
        }
    }

    private void solvers(long seed, int cases, int parts) {
        List<Contender> contenders = List.of(new Ours(), new ByPrograms(), new ByConstraints(), new ByPropagation(),
                new Branching());
        for (long s = seed; s < seed + cases; s++) {
            SetupProblem order = OrderChoice.problem(shop(s).order(parts, OPENINGS_IN_ORDER), shop(s).readiness(SHEETS),
                    ChoiceWeights.USUAL);
            SetupProblem one = OrderChoice.problem(List.of(shop(s).part("part", OPENINGS, 20)), shop(s).readiness(SHEETS),
                    ChoiceWeights.USUAL);
            double[] change = new double[one.setups()];
            Arrays.fill(change, 8);
            compare("part  ", new SetupProblem(one.tasks(), change, one.limitOf(), one.limits()), contenders);
            compare("order ", order, contenders);
        }
    }

    private void compare(String what, SetupProblem problem, List<Contender> contenders) {
        for (Contender c : contenders) {
            if (problem.seating() == null || !(c instanceof Branching)) {
                double start = seconds();
                Solution s = c.solve(problem, WORK);
                add(what + c.name(), seconds() - start, s.cost(), s.bound());
                out.flush();
            }
        }
    }

    private static double seconds() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() * 1e-9;
    }

    private void add(String what, double seconds, double cost, double bound) {
        boolean proven = cost - bound <= 1e-6 * Math.max(1, Math.abs(cost));
        double gap = proven ? 0 : Double.isFinite(cost) && bound > 0 ? (cost - bound) / bound : 1;
        rows.computeIfAbsent(what, k -> new ArrayList<>()).add(new double[] { seconds, proven ? 1 : 0, gap });
    }

    private void print() {
        out.printf(Locale.ROOT, "%-32s %6s %9s %10s %10s %12s%n", "what", "cases", "proven %", "median s", "worst s",
                "worst gap %");
        rows.forEach((what, list) -> {
            double[] times = list.stream().mapToDouble(r -> r[0]).sorted().toArray();
            out.printf(Locale.ROOT, "%-32s %6d %9.1f %10.2f %10.2f %12.3f%n", what, list.size(),
                    100 * list.stream().mapToDouble(r -> r[1]).average().orElse(0), times[times.length / 2],
                    times[times.length - 1], 100 * list.stream().mapToDouble(r -> r[2]).max().orElse(0));
        });
    }

    /** Whether fewer than 95 of 100 are proven in 1 s for a part or 10 s for an order, or a gap is above 2 per cent. */
    private boolean missed() {
        return rows.entrySet().stream().anyMatch(e -> {
            double most = e.getKey().startsWith("part") ? 1 : 10;
            double good = e.getValue().stream().filter(r -> r[1] > 0 && r[0] <= most).count();
            return good < 0.95 * e.getValue().size() || e.getValue().stream().anyMatch(r -> r[2] > 0.02);
        });
    }

    private static final class Ours implements Contender {

        @Override
        public String name() {
            return "prices and ojAlgo (ours)";
        }

        @Override
        public Solution solve(SetupProblem problem, double work) {
            return SetupSolver.solve(problem, 3000);
        }
    }

    private static final class Branching implements Contender {

        @Override
        public String name() {
            return "branch and bound (former)";
        }

        @Override
        public Solution solve(SetupProblem problem, double work) {
            return ByBranching.solve(problem, 4000);
        }
    }
}
