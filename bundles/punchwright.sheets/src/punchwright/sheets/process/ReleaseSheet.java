// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.process;

import static punchwright.sheets.process.ProcessPages.blankIfNull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.model.plan.Finding;
import punchwright.model.plan.Layout;
import punchwright.model.plan.PlanStatus;
import punchwright.model.plan.SheetJob;
import punchwright.sheets.book.Look;
import punchwright.sheets.book.SheetPen;

/** Last sheet: findings, checks passed, cautions, sign-off. */
public final class ReleaseSheet {

    private static final int LAST = 5;
    /** Reference mass of ISO 11228-1 for lifting by one person, kg (from memory). */
    private static final double REFERENCE_MASS_KG = 25;
    private static final String[] CAUTIONS = {"caution.first", "caution.machine", "caution.trial", "caution.tools",
            "caution.edges",
        "caution.spring"};

    private final ProcessPages pages;
    private final SheetPen pen;

    private ReleaseSheet(ProcessPages pages) {
        this.pages = pages;
        this.pen = pages.sheet(pages.text("release.sheet"), 0, 0);
    }

    public static void write(ProcessPages pages) {
        ReleaseSheet sheet = new ReleaseSheet(pages);
        sheet.pen.widths(11, 24, 24, 44, 34, 16);
        sheet.pen.wide(0, LAST, pages.text("release.title"), Look.TITLE).height(24).next();
        sheet.findings();
        sheet.checks();
        sheet.cautions();
        sheet.signOff();
    }

    private void findings() {
        pen.section(pages.text("finding.section"), LAST);
        if (pages.plan().getFindings().isEmpty()) {
            pen.wide(0, LAST, pages.text("finding.none"), Look.TEXT).next().skip(1);
            return;
        }
        for (int c = 0; c < 4; c++) {
            pen.text(c, pages.text(new String[] {"finding.severity", "finding.code", "finding.subject", "finding.message"}[c]),
                    Look.HEAD);
        }
        pen.wide(4, LAST, pages.text("finding.remedy"), Look.HEAD).height(16).next();
        Map<List<Object>, List<Finding>> equal = new LinkedHashMap<>();
        pages.plan().getFindings().stream().sorted(Comparator.comparing(Finding::getSeverity).reversed())
                .forEach(f -> equal.computeIfAbsent(List.of(f.getSeverity(), blankIfNull(f.getCode()),
                        blankIfNull(f.getSubject()),
                        blankIfNull(f.getMessage())), k -> new ArrayList<>()).add(f));
        equal.values().forEach(fs -> finding(fs.get(0), fs.size()));
        pen.skip(1);
    }

    private void finding(Finding f, int times) {
        String subject = blankIfNull(f.getSubject()) + (times > 1 ? "  (" + times + " ×)" : "");
        String message = blankIfNull(f.getMessage());
        pen.text(0, pages.texts().word(f.getSeverity()), Look.TEXT_BOLD).text(1, blankIfNull(f.getCode()), Look.TEXT_WRAP)
                .text(2, subject, Look.TEXT_WRAP).text(3, message, Look.TEXT_WRAP)
                .wide(4, LAST, blankIfNull(f.getRemedy()), Look.TEXT_WRAP);
        pen.fit(blankIfNull(f.getCode()), 23).fit(subject, 22).fit(message, 42).fit(blankIfNull(f.getRemedy()), 48).next();
    }

    private void checks() {
        pen.keep(SheetPen.table(pages.plan().getChecks().size() + 1));
        pen.section(pages.text("check.section"), LAST);
        if (pages.plan().getChecks().isEmpty()) {
            boolean proven = pages.plan().getStatus() == PlanStatus.PROVEN || pages.plan().getStatus() == PlanStatus.RELEASED;
            pen.wide(0, LAST, pages.text(proven ? "check.proven" : "check.none"), Look.TEXT_BOLD).next().skip(1);
            return;
        }
        for (String check : pages.plan().getChecks()) {
            pen.text(0, pages.text("check.passed"), Look.TEXT_BOLD).wide(1, LAST, check, Look.TEXT_WRAP).fit(check, 130).next();
        }
        pen.skip(1);
    }

    private void cautions() {
        pen.keep(SheetPen.table(CAUTIONS.length + 4));
        pen.section(pages.text("caution.section"), LAST);
        int number = 1;
        for (String key : CAUTIONS) {
            number = caution(number, pages.text(key));
        }
        double heaviest = 0;
        for (SheetJob job : pages.plan().getJobs()) {
            for (Layout layout : job.getLayouts()) {
                heaviest = Math.max(heaviest, ProcessPages.massKg(job, layout));
            }
        }
        caution(number, pages.text(heaviest > REFERENCE_MASS_KG ? "caution.heavy" : "caution.light",
                pages.texts().number(heaviest, 1)));
        pen.skip(1);
    }

    private int caution(int number, String text) {
        pen.number(0, number, Look.TEXT_CENTER).wide(1, LAST, text, Look.TEXT_WRAP).fit(text, 140).next();
        return number + 1;
    }

    private void signOff() {
        pen.keep(SheetPen.table(8));
        pen.section(pages.text("sign.section"), LAST);
        pen.wide(0, 1, pages.text("sign.step"), Look.HEAD).text(2, pages.text("sign.name"), Look.HEAD)
                .text(3, pages.text("sign.remark"), Look.HEAD).text(4, pages.text("sign.signature"), Look.HEAD)
                .text(5, pages.text("sign.date"), Look.HEAD).height(16).next();
        for (String step : new String[] {"sign.planned", "sign.checked", "sign.setup", "sign.first", "sign.released"}) {
            pen.wide(0, 1, pages.text(step), Look.BLANK_BOX);
            for (int c = 2; c <= LAST; c++) {
                pen.text(c, "", Look.BLANK_BOX);
            }
            pen.height(22).next();
        }
    }
}
