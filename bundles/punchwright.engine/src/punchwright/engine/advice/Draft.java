// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import punchwright.engine.tooling.ToolSize;

/** A tool that could be bought, gathering for which parts, with which die clearances. */
final class Draft {

    /** Needs within this ratio share a die: the wider is then no more than a quarter off. */
    private static final double SHARED = 1.25;
    private static final int NAMED = 3;

    private final ToolSize size;
    private final TreeSet<Double> needs = new TreeSet<>();
    private final TreeSet<String> parts = new TreeSet<>();

    Draft(ToolSize size) {
        this.size = size;
    }

    void wanted(String part, double clearanceMm) {
        parts.add(part);
        needs.add(Math.rint(clearanceMm * 100) / 100);
    }

    /** Dies to buy with it, mm, ascending. */
    List<Double> clearances() {
        List<Double> dies = new ArrayList<>();
        for (double need : needs) {
            if (dies.isEmpty() || need > SHARED * dies.getLast() + 1e-9) {
                dies.add(need);
            }
        }
        return dies;
    }

    String why() {
        List<String> named = parts.stream().limit(NAMED).toList();
        int more = parts.size() - named.size();
        return String.join(", ", named) + (more > 0 ? " and " + more + " more" : "");
    }

    ToolSize size() {
        return size;
    }
}
