// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.process;

import static punchwright.sheets.process.ProcessPages.blankIfNull;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import punchwright.model.plan.Layout;
import punchwright.model.plan.Plan;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.TimeCause;
import punchwright.model.plan.TimeShare;
import punchwright.model.shop.Revision;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.sheets.book.Look;
import punchwright.sheets.book.SheetPen;

/** First sheet: title block after ISO 7200, order, material and stock, times by cause, revisions. */
public final class OverviewSheet {

    private static final int LAST = 11;
    private static final int REVISIONS_SHOWN = 6;

    private final ProcessPages pages;
    private final Plan plan;
    private final SheetPen pen;

    private OverviewSheet(ProcessPages pages) {
        this.pages = pages;
        this.plan = pages.plan();
        this.pen = pages.sheet(pages.text("process.title"), -1, -1);
    }

    public static void write(ProcessPages pages) {
        OverviewSheet sheet = new OverviewSheet(pages);
        sheet.pen.widths(12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12, 12);
        sheet.titleBlock();
        sheet.order();
        sheet.stock();
        sheet.times();
        sheet.revisions();
    }

    private void titleBlock() {
        pen.wide(0, LAST, pages.text("process.title") + "  " + pages.number(), Look.TITLE).height(26).next();
        Order order = plan.getOrder();
        Revision revision = pages.library().getRevisions().stream().filter(r -> r.getNumber() == plan.getLibraryRevision())
                .findFirst()
                .orElse(null);
        boxes("title.owner", pages.library().getName(), "title.type", pages.text("process.title"), "title.number", plan.getId(),
                "title.status", plan.getStatus() == null ? "" : pages.texts().word(plan.getStatus()));
        boxes("title.title", order == null ? "" : order.getName(), "title.customer", order == null ? "" : order.getCustomer(),
                "title.machine", pages.machine(), "title.due", order == null ? "" : order.getDueDate());
        boxes("title.creator", revision == null ? "" : revision.getWho(), "title.date", pages.date(),
                "title.revision", pages.text("title.library", plan.getLibraryRevision()), "title.approved", "");
        boxes("title.department", "", "title.language", pages.texts().locale().getLanguage(), "title.paper", "A4",
                "title.program", plan.getProgramVersion());
        pen.skip(1);
    }

    /** Four fields beside each other, the small word above the value. */
    private void boxes(String... keysAndValues) {
        for (int i = 0; i < 4; i++) {
            pen.wide(3 * i, 3 * i + 2, pages.text(keysAndValues[2 * i]), Look.FIELD);
        }
        pen.height(11).next();
        for (int i = 0; i < 4; i++) {
            for (int c = 3 * i; c < 3 * i + 3; c++) {
                pen.cell(c, Look.TEXT);
            }
            pen.wide(3 * i, 3 * i + 2, blankIfNull(keysAndValues[2 * i + 1]), Look.TEXT_BOLD);
        }
        pen.height(15).next();
    }

    private void order() {
        if (plan.getOrder() == null) {
            return;
        }
        pen.section(pages.text("order.section"), LAST);
        heads("order.line", "order.number", null, "order.revision", "order.name", null, null, null, null, ">order.quantity",
                "order.due", null);
        int number = 1;
        for (OrderLine line : plan.getOrder().getLines()) {
            pen.number(0, number++, Look.TEXT_CENTER);
            pen.wide(1, 2, line.getItem() == null ? "" : line.getItem().getNumber(), Look.TEXT_BOLD);
            pen.text(3, line.getItem() == null ? "" : line.getItem().getRevision(), Look.TEXT_CENTER);
            pen.wide(4, 8, line.getItem() == null ? "" : line.getItem().getName(), Look.TEXT);
            pen.number(9, line.getQuantity(), Look.COUNT);
            String due = blankIfNull(line.getDueDate()).isEmpty() ? plan.getOrder().getDueDate() : line.getDueDate();
            pen.wide(10, 11, "", Look.TEXT).date(10, due, Look.TEXT).next();
        }
        pen.skip(1);
    }

    private void stock() {
        pen.keep(SheetPen.table(plan.getJobs().stream().mapToInt(j -> j.getLayouts().size()).sum()));
        pen.section(pages.text("stock.section"), LAST);
        heads("stock.layout", "stock.material", null, null, "stock.item", null, null, "stock.size", ">stock.sheets",
                ">stock.mass", ">stock.utilisation", "stock.location");
        int job = 1;
        for (SheetJob work : plan.getJobs()) {
            for (Layout layout : work.getLayouts()) {
                stockRow(work, job, layout);
            }
            job++;
        }
        pen.skip(1);
    }

    private void stockRow(SheetJob work, int job, Layout layout) {
        pen.text(0, job + "." + layout.getNumber(), Look.TEXT_CENTER);
        pen.wide(1, 3, pages.material(work), Look.TEXT);
        pen.wide(4, 6, layout.getStock() == null ? "" : layout.getStock().getName(), Look.TEXT);
        pen.text(7, pages.texts().number(layout.getLengthMm(), 1) + " × " + pages.texts().number(layout.getWidthMm(), 1),
                Look.TEXT);
        pen.number(8, layout.getRunCount(), Look.COUNT).number(9, ProcessPages.massKg(work, layout), Look.DEC1);
        pen.number(10, layout.getUtilisationPercent() / 100, Look.PERCENT);
        pen.text(11, layout.getStock() == null ? "" : layout.getStock().getLocation(), Look.TEXT).next();
    }

    private void times() {
        pen.keep(SheetPen.table(sums().size() + 1));
        pen.section(pages.text("time.section"), LAST);
        heads("time.cause", null, null, null, null, null, ">time.count", null, ">time.minutes", null, ">time.share", null);
        Map<TimeCause, double[]> sums = sums();
        double all = sums.values().stream().mapToDouble(s -> s[0]).sum();
        int first = pen.row() + 1;
        sums.forEach((cause, sum) -> {
            pen.wide(0, 5, pages.texts().word(cause), Look.TEXT);
            pen.wide(6, 7, "", Look.COUNT).numberOrBlank(6, sum[1], Look.COUNT);
            pen.wide(8, 9, "", Look.DEC2).number(8, sum[0] / 60, Look.DEC2);
            pen.wide(10, 11, "", Look.PERCENT).number(10, all > 0 ? sum[0] / all : 0, Look.PERCENT).next();
        });
        pen.wide(0, 5, pages.text("time.total"), Look.TEXT_BOLD).wide(6, 7, "", Look.TEXT);
        pen.wide(8, 9, "", Look.DEC2);
        if (sums.isEmpty()) {
            pen.number(8, 0, Look.DEC2);
        } else {
            pen.formula(8, "SUM(I" + first + ":I" + pen.row() + ")", Look.DEC2);
        }
        pen.wide(10, 11, "", Look.TEXT).next().skip(1);
    }

    /** Seconds and counts of all runs by cause, in the order of causes. */
    private Map<TimeCause, double[]> sums() {
        Map<TimeCause, double[]> sums = new java.util.EnumMap<>(TimeCause.class);
        for (SheetJob job : plan.getJobs()) {
            add(sums, job.getSetUp(), 1);
            job.getLayouts().forEach(l -> add(sums, l.getTimes(), l.getRunCount()));
        }
        return new LinkedHashMap<>(sums);
    }

    private static void add(Map<TimeCause, double[]> sums, List<TimeShare> shares, int runs) {
        for (TimeShare share : shares) {
            double[] sum = sums.computeIfAbsent(share.getCause(), c -> new double[2]);
            sum[0] += runs * share.getSeconds();
            sum[1] += runs * share.getCount();
        }
    }

    private void revisions() {
        List<Revision> all = pages.library().getRevisions();
        if (all.isEmpty()) {
            return;
        }
        pen.keep(SheetPen.table(Math.min(REVISIONS_SHOWN, all.size())));
        pen.section(pages.text("revision.section"), LAST);
        heads("revision.number", "revision.date", "revision.who", null, "revision.why", null, null, null, null, null, null, null);
        for (int i = all.size() - 1; i >= Math.max(0, all.size() - REVISIONS_SHOWN); i--) {
            Revision r = all.get(i);
            pen.number(0, r.getNumber(), Look.TEXT_CENTER).date(1, r.getDate(), Look.TEXT);
            pen.wide(2, 3, blankIfNull(r.getWho()), Look.TEXT).wide(4, LAST, blankIfNull(r.getWhy()), Look.TEXT_WRAP);
            pen.fit(blankIfNull(r.getWhy()), 100).next();
        }
    }

    /** Headings by key; null widens the one before. */
    private void heads(String... keys) {
        int[] from = IntStream.range(0, keys.length).filter(c -> keys[c] != null).toArray();
        pen.heads(from, keys.length - 1, IntStream.of(from).mapToObj(c -> keys[c].startsWith(">")
                ? ">" + pages.text(keys[c].substring(1)) : pages.text(keys[c])).toArray(String[]::new));
    }
}
