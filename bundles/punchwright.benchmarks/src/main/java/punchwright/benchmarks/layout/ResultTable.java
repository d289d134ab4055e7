// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Sums of the results of each group of instances, and over the groups with a best published total. */
final class ResultTable {

    private static final int GROUP_OF = 10;

    private static final class Sum {
        private int instances;
        private int valid;
        private int proven;
        private double ours;
        private double bound;
        private double gap;
        private double worst;
        private int gaps;
        private double seconds;
        private double longest;
    }

    private final boolean turn;
    private final Map<String, Sum> groups = new LinkedHashMap<>();

    ResultTable(boolean turn) {
        this.turn = turn;
    }

    void add(String group, Instance.Outcome o) {
        Sum s = groups.computeIfAbsent(group, g -> new Sum());
        s.instances++;
        s.valid += o.valid().isEmpty() ? 1 : 0;
        s.proven += o.ours() <= o.bound() * (1 + 1e-5) ? 1 : 0;
        s.ours += o.ours();
        s.bound += o.bound();
        s.seconds += o.seconds();
        s.longest = Math.max(s.longest, o.seconds());
        if (!Double.isNaN(o.best()) && !Double.isNaN(o.density())) {
            double gap = o.density() * (o.ours() / o.best() - 1);
            s.gap += gap;
            s.worst = s.gaps == 0 ? gap : Math.max(s.worst, gap);
            s.gaps++;
        }
    }

    boolean allValid() {
        return groups.values().stream().allMatch(s -> s.valid == s.instances);
    }

    void print(PrintStream out) {
        out.printf(Locale.ROOT, "%-14s %9s %6s %7s %12s %12s %10s  %-32s %9s %8s%n", "group", "instances", "valid", "proven",
                "ours", "bound", "best", "against the best", "seconds", "longest");
        double ours = 0;
        double best = 0;
        int instances = 0;
        for (Map.Entry<String, Sum> e : groups.entrySet()) {
            Sum s = e.getValue();
            double total = s.instances == GROUP_OF ? Published.total(e.getKey(), turn) : Double.NaN;
            boolean known = !Double.isNaN(total);
            out.printf(Locale.ROOT, "%-14s %9d %6d %7d %12.2f %12.2f %10s  %-32s %9.1f %8.1f%n", e.getKey(), s.instances, s.valid,
                    s.proven, s.ours, s.bound, known ? String.format(Locale.ROOT, "%.0f", total) : "-",
                    known ? percent(s.ours, total) : points(s), s.seconds, s.longest);
            ours += known ? s.ours : 0;
            best += known ? total : 0;
            instances += known ? s.instances : 0;
        }
        if (best > 0) {
            out.printf(Locale.ROOT, "%d instances with a best published total: %.0f bins, best %.0f, %s%n", instances, ours, best,
                    percent(ours, best));
        }
    }

    private static String percent(double ours, double best) {
        return String.format(Locale.ROOT, "%+.2f %%", 100 * (ours / best - 1));
    }

    private static String points(Sum s) {
        return s.gaps == 0 ? "-" : String.format(Locale.ROOT, "points below: mean %.2f worst %.2f", s.gap / s.gaps, s.worst);
    }
}
