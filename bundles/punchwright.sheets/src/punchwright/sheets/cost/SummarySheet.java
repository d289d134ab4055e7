// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.cost;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.apache.poi.ss.util.CellRangeAddress;

import punchwright.model.plan.Finding;
import punchwright.model.plan.Plan;
import punchwright.model.plan.Severity;
import punchwright.model.shop.Library;
import punchwright.model.work.Order;
import punchwright.model.work.OrderLine;
import punchwright.sheets.book.Look;
import punchwright.sheets.book.SheetPen;
import punchwright.sheets.book.Texts;

/** The sheet for management: machines compared, cost by kind for lot and piece, other lots, what is to be known. */
final class SummarySheet {

    static final String[] KINDS = {"material", "purchased", "machine", "labour", "set_up", "tool_wear", "consumables",
            "secondary",
        "overheads"};
    private static final int LAST = 14;

    private final FigureTable table;
    private final Order order;
    private final Library library;
    private final Texts texts;
    private final SheetPen pen;
    private final Map<Plan, CellRangeAddress> pieceRows = new LinkedHashMap<>();
    private final List<CellRangeAddress> lotRows = new ArrayList<>();
    private CellRangeAddress compareRows;

    SummarySheet(FigureTable table, Order order, Library library, Texts texts, SheetPen pen) {
        this.table = table;
        this.order = order;
        this.library = library;
        this.texts = texts;
        this.pen = pen;
    }

    /** Rows with the cost of a piece by line, for each plan. */
    Map<Plan, CellRangeAddress> pieceRows() {
        return pieceRows;
    }

    /** Rows with the lots of a line, smallest first; only lines with other lots. */
    List<CellRangeAddress> lotRows() {
        return lotRows;
    }

    /** Rows of the machines compared; null when none can make the order. */
    CellRangeAddress compareRows() {
        return compareRows;
    }

    void write(PageTexts page, List<Plan> plans) {
        page.apply(pen, 0, 0);
        pen.widths(6, 30, 10, 12, 11, 11, 11, 11, 12, 14, 12, 12, 15, 12, 15);
        pen.wide(0, LAST, texts.get("cost.title") + "  " + text(order.getNumber()), Look.TITLE).height(26).next();
        fields();
        compare();
        for (Map.Entry<Plan, String> plan : table.codes().entrySet()) {
            costs(plan.getKey(), plan.getValue(), "lot", Look.DEC2, Look.MONEY_TOTAL);
            costs(plan.getKey(), plan.getValue(), "piece", Look.DEC4, Look.MONEY4_TOTAL);
        }
        lots();
        refused(plans);
        findings(plans);
        String rule = texts.get("cost.rule");
        pen.wide(0, LAST, rule, Look.NOTE).fit(rule, 170).next();
    }

    private void fields() {
        String[][] boxes = {{"title.owner", library.getName()}, {"title.title", order.getName()}, {"title.customer",
                order.getCustomer()},
            {"title.due", order.getDueDate()}, {"cost.currency", library.getCurrency()}};
        for (int i = 0; i < boxes.length; i++) {
            pen.wide(3 * i, 3 * i + 2, texts.get(boxes[i][0]), Look.FIELD);
        }
        pen.height(11).next();
        for (int i = 0; i < boxes.length; i++) {
            pen.wide(3 * i, 3 * i + 2, text(boxes[i][1]), Look.TEXT_BOLD);
        }
        pen.height(15).next().skip(1);
    }

    /** Machines side by side; the difference is to the least total cost. */
    private void compare() {
        if (table.codes().isEmpty()) {
            pen.wide(0, LAST, texts.get("cost.none"), Look.TEXT_BOLD).next().skip(1);
            return;
        }
        pen.section(texts.get("compare.section"), LAST);
        spans(new int[] {0, 3, 5, 7, 9, 11, 13}, "compare.machine", ">compare.hours", ">compare.rate", ">compare.total",
                ">compare.price",
                ">compare.difference", ">compare.share");
        List<String> totals = table.codes().values().stream().map(c -> c + "M_order_total").toList();
        String least = totals.size() == 1 ? totals.get(0) : "MIN(" + String.join(",", totals) + ")";
        compareRows = rows(pen.row(), pen.row() + totals.size() - 1);
        for (Map.Entry<Plan, String> plan : table.codes().entrySet()) {
            String code = plan.getValue();
            pen.wide(0, 2, plan.getKey().getMachine().getName(), Look.TEXT_BOLD);
            pair(3, code + "M_order_run_hours", Look.DEC2);
            pair(5, code + "H_rate", Look.MONEY);
            pair(7, code + "M_order_total", Look.MONEY_TOTAL);
            pair(9, code + "M_order_price", Look.MONEY);
            pair(11, code + "M_order_total-" + least, Look.MONEY);
            pair(13, "IF(" + least + ">0," + code + "M_order_total/" + least + ",0)", Look.PERCENT);
            pen.next();
        }
        pen.skip(1);
    }

    private void pair(int column, String formula, Look look) {
        pen.wide(column, column + 1, "", look).formula(column, formula, look);
    }

    /** Lines by kind; for the lot with the order's sums under them. */
    private void costs(Plan plan, String code, String per, Look look, Look total) {
        int lines = (int) table.all().stream().filter(f -> f.key().matches("L\\d+_quantity")).count();
        pen.keep(SheetPen.table(lines + 2));
        pen.section(texts.get("cost.by." + per, plan.getMachine().getName(), library.getCurrency()), LAST);
        List<String> heads = new ArrayList<>(List.of(texts.get("order.line"), texts.get("order.name"), ">"
                + texts.get("order.quantity")));
        for (String kind : KINDS) {
            heads.add(">" + texts.get("kind." + kind));
        }
        heads.addAll(List.of(">" + texts.get("kind.total"), ">" + texts.get("kind.profit"), ">" + texts.get("kind.price")));
        pen.heads(heads.toArray(String[]::new));
        int first = pen.row();
        for (int line = 1; table.has(code + "M_L" + line + "_total_lot"); line++) {
            pen.number(0, line, Look.TEXT_CENTER).text(1, item(line), Look.TEXT_WRAP).formula(2, "L" + line + "_quantity",
                    Look.COUNT);
            row(code + "M_L" + line + "_", "_" + per, look, total);
            pen.fit(item(line), 28).next();
        }
        if ("piece".equals(per)) {
            pieceRows.put(plan, rows(first, pen.row() - 1));
        }
        if ("lot".equals(per)) {
            pen.text(0, "", Look.TEXT).text(1, texts.get("cost.order"), Look.TEXT_BOLD).text(2, "", Look.TEXT);
            row(code + "M_order_", "", look, total);
            pen.next();
        }
        pen.skip(1);
    }

    private void row(String before, String after, Look look, Look total) {
        int column = 3;
        for (String kind : KINDS) {
            pen.formula(column++, before + kind + after, look);
        }
        pen.formula(column++, before + "total" + after, total);
        pen.formula(column++, before + "profit" + after, look);
        pen.formula(column, before + "price" + after, total);
    }

    private String item(int line) {
        if (line > order.getLines().size()) {
            return "";
        }
        OrderLine l = order.getLines().get(line - 1);
        return l.getItem() == null ? "" : (text(l.getItem().getNumber()) + " " + text(l.getItem().getName())).trim();
    }

    /** Cost of a piece at the ordered quantity and at the other lots, for each machine. */
    private void lots() {
        Map.Entry<Plan, String> any = table.codes().entrySet().stream().findFirst().orElse(null);
        if (any == null || table.all().stream().noneMatch(f -> f.key().endsWith("_lot1_size"))) {
            return;
        }
        int rows = (int) table.all().stream().filter(f -> f.key().matches("L\\d+_(quantity|lot\\d+_size)")).count();
        pen.keep(SheetPen.table(rows + 1));
        pen.section(texts.get("lots.section"), LAST);
        List<Plan> plans = table.codes().keySet().stream().limit(3).toList();
        lotHeads(plans);
        for (int line = 1; table.has(any.getValue() + "M_L" + line + "_total_lot"); line++) {
            int first = pen.row();
            List<Lot> sizes = sizes(line);
            sizes.forEach(s -> lotRow(s, plans));
            if (sizes.size() > 1) {
                lotRows.add(rows(first, pen.row() - 1));
            }
        }
        pen.skip(1);
    }

    private void lotHeads(List<Plan> plans) {
        int[] from = new int[2 + 2 * plans.size()];
        String[] names = new String[from.length];
        names[0] = texts.get("order.name");
        from[1] = 2;
        names[1] = ">" + texts.get("lots.size");
        for (int p = 0; p < plans.size(); p++) {
            String machine = plans.size() > 1 ? plans.get(p).getMachine().getName() + ": " : "";
            from[2 + 2 * p] = 3 + 4 * p;
            names[2 + 2 * p] = ">" + machine + texts.get("lots.total");
            from[3 + 2 * p] = 5 + 4 * p;
            names[3 + 2 * p] = ">" + machine + texts.get("lots.piece");
        }
        pen.heads(from, 2 + 4 * plans.size(), names);
    }

    /** The ordered quantity and the other lots of a line, smallest first. */
    private List<Lot> sizes(int line) {
        List<Lot> sizes = new ArrayList<>();
        sizes.add(new Lot(line, "L" + line + "_quantity", "_total_lot", "_total_piece"));
        for (int lot = 1; table.has("L" + line + "_lot" + lot + "_size"); lot++) {
            sizes.add(new Lot(line, "L" + line + "_lot" + lot + "_size", "_lot" + lot + "_total", "_lot" + lot + "_piece"));
        }
        sizes.sort(Comparator.comparingDouble(s -> table.get(s.size()).value()));
        return sizes;
    }

    private void lotRow(Lot lot, List<Plan> plans) {
        pen.wide(0, 1, item(lot.line()), Look.TEXT).formula(2, lot.size(), Look.COUNT);
        for (int p = 0; p < plans.size(); p++) {
            String stem = table.codes().get(plans.get(p)) + "M_L" + lot.line();
            pair(3 + 4 * p, stem + lot.total(), Look.MONEY);
            pair(5 + 4 * p, stem + lot.piece(), Look.MONEY4_TOTAL);
        }
        pen.next();
    }

    /** Ends of the names of a lot's cells. */
    private record Lot(int line, String size, String total, String piece) {
    }

    private static CellRangeAddress rows(int first, int last) {
        return new CellRangeAddress(first, last, 0, 0);
    }

    private void refused(List<Plan> plans) {
        List<Plan> bare = plans.stream().filter(p -> !table.codes().containsKey(p)).toList();
        if (bare.isEmpty()) {
            return;
        }
        pen.keep(SheetPen.table(2 * bare.size() + 1));
        pen.section(texts.get("refused.section"), LAST);
        for (Plan plan : bare) {
            String why = plan.getFindings().stream().filter(f -> f.getSeverity() == Severity.ERROR)
                    .map(SummarySheet::said).findFirst().orElse("");
            pen.wide(0, 2, plan.getMachine().getName(), Look.TEXT_BOLD).wide(3, LAST, text(why), Look.TEXT_WRAP).fit(text(why),
                    130).next();
        }
        pen.skip(1);
    }

    /** What it concerns and what is the case. */
    private static String said(Finding f) {
        return text(f.getSubject()).isEmpty() ? text(f.getMessage()) : text(f.getSubject()) + ": " + text(f.getMessage());
    }

    /** Findings of the calculation itself. */
    private void findings(List<Plan> plans) {
        List<String> seen = new ArrayList<>();
        for (Plan plan : plans) {
            for (Finding f : plan.getFindings()) {
                String line = said(f) + " " + text(f.getRemedy());
                if (text(f.getCode()).startsWith("COST-") && !seen.contains(line)) {
                    if (seen.isEmpty()) {
                        pen.section(texts.get("finding.section"), LAST);
                    }
                    seen.add(line);
                    pen.wide(0, 1, texts.word(f.getSeverity()) + "  " + f.getCode(), Look.TEXT_BOLD).wide(2, LAST, line,
                            Look.TEXT_WRAP)
                            .fit(line, 135).next();
                }
            }
        }
        pen.skip(seen.isEmpty() ? 0 : 1);
    }

    private void spans(int[] from, String... keys) {
        pen.heads(from, LAST, Stream.of(keys).map(k -> k.startsWith(">") ? ">" + texts.get(k.substring(1)) : texts.get(k))
                .toArray(String[]::new));
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
