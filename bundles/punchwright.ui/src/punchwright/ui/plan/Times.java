// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.plan;

import java.util.ArrayList;
import java.util.List;

import punchwright.model.plan.Layout;
import punchwright.model.plan.Plan;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.TimeShare;
import punchwright.ui.text.Texts;

/** Where the time of a plan goes: sheet by sheet, cause by cause. */
final class Times {

    /**
     * One line.
     *
     * @param sheet        job and layout, as "1.2"
     * @param cause        what it goes to
     * @param count        how often in one run
     * @param seconds      in one run
     * @param sharePercent of the run
     * @param runs         how often the sheet is run
     */
    record Line(String sheet, String cause, int count, double seconds, double sharePercent, int runs) {
    }

    private Times() {
    }

    static List<Line> of(Plan plan) {
        List<Line> lines = new ArrayList<>();
        int job = 1;
        for (SheetJob sheetJob : plan.getJobs()) {
            for (Layout layout : sheetJob.getLayouts()) {
                of(layout, job + "." + layout.getNumber(), lines);
            }
            for (TimeShare share : sheetJob.getSetUp()) {
                lines.add(new Line(Integer.toString(job), cause(share), share.getCount(), share.getSeconds(), 0, 1));
            }
            job++;
        }
        return lines;
    }

    private static void of(Layout layout, String sheet, List<Line> lines) {
        for (TimeShare share : layout.getTimes()) {
            double percent = layout.getCycleTimeS() > 0 ? 100 * share.getSeconds() / layout.getCycleTimeS() : 0;
            lines.add(new Line(sheet, cause(share), share.getCount(), share.getSeconds(), percent, layout.getRunCount()));
        }
    }

    private static String cause(TimeShare share) {
        return share.getLabel() == null || share.getLabel().isBlank() ? Texts.of(share.getCause()) : share.getLabel();
    }
}
