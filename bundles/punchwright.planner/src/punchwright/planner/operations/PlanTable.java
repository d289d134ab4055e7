// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import punchwright.model.plan.Layout;
import punchwright.model.plan.Plan;
import punchwright.model.plan.PlanStatus;
import punchwright.model.plan.Severity;
import punchwright.model.plan.SheetJob;

/** Plans as lines of a table that fits a terminal. */
final class PlanTable {

    static final List<String> HEADER = List.of(
            String.format(Locale.ROOT, "%-10s %-28s %-10s %6s %6s %7s %8s %8s %7s %11s", "order", "machine", "plan", "sheets",
                    "parts", "hits", "use %", "run min", "bound %", "total"));

    private PlanTable() {
    }

    static boolean proven(Plan plan) {
        return plan.getStatus() == PlanStatus.PROVEN;
    }

    /** One line for the plan, and for a plan that cannot be made its first errors. */
    static List<String> lines(Plan plan) {
        List<String> lines = new ArrayList<>();
        String start = String.format(Locale.ROOT, "%-10s %-28s %-10s", plan.getOrder().getNumber(),
                cut(plan.getMachine().getName(), 28), proven(plan) ? "proven" : "no");
        if (!proven(plan)) {
            lines.add(start);
            plan.getFindings().stream().filter(f -> f.getSeverity() == Severity.ERROR).limit(2)
                    .forEach(f -> lines.add("           " + f.getSubject() + ": " + f.getMessage()));
            return lines;
        }
        lines.add(start + figures(plan));
        return lines;
    }

    private static String figures(Plan plan) {
        int sheets = 0;
        int parts = 0;
        long hits = 0;
        double partArea = 0;
        double sheetArea = 0;
        double bound = 0;
        double running = 0;
        for (SheetJob job : plan.getJobs()) {
            for (Layout l : job.getLayouts()) {
                sheets += l.getRunCount();
                parts += l.getRunCount() * l.getPlacements().size();
                hits += (long) l.getRunCount() * l.getHits().size();
                sheetArea += l.getRunCount() * l.getLengthMm() * l.getWidthMm();
                partArea += l.getRunCount() * l.getLengthMm() * l.getWidthMm() * l.getUtilisationPercent() / 100;
                bound += l.getRunCount() * l.getBoundTimeS();
                running += l.getRunCount() * l.getCycleTimeS();
            }
        }
        return String.format(Locale.ROOT, " %6d %6d %7d %8.1f %8.1f %7.1f %11.2f", sheets, parts, hits,
                100 * partArea / sheetArea, running / 60, 100 * (running / bound - 1),
                plan.getTotalCost());
    }

    private static String cut(String text, int width) {
        return text.length() <= width ? text : text.substring(0, width - 1) + "\u2026";
    }
}
