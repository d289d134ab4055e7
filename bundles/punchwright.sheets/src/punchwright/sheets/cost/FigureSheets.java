// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.cost;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;

import punchwright.sheets.book.Book;
import punchwright.sheets.book.Look;
import punchwright.sheets.book.SheetPen;
import punchwright.sheets.book.Texts;

/** The sheet of inputs and one sheet for each level of the calculation; every figure a named cell. */
final class FigureSheets {

    private static final int VALUE = 1;

    private final FigureTable table;
    private final Texts texts;
    private final Book book;
    private final PageTexts page;
    private final Map<String, XSSFCell> cells = new LinkedHashMap<>();

    FigureSheets(FigureTable table, Texts texts, Book book, PageTexts page) {
        this.table = table;
        this.texts = texts;
        this.book = book;
        this.page = page;
    }

    /** The cell of each figure by its key. */
    Map<String, XSSFCell> cells() {
        return cells;
    }

    void writeInputs() {
        SheetPen pen = sheet(texts.get("cost.inputs"));
        pen.wide(0, 4, texts.get("cost.inputs.title"), Look.TITLE).height(24).next();
        String hint = texts.get("cost.inputs.hint");
        pen.wide(0, 4, hint, Look.NOTE).fit(hint, 130).next();
        pen.heads(texts.get("cost.figure"), ">" + texts.get("cost.value"), texts.get("cost.unit"), texts.get("cost.name"),
                texts.get("cost.source"));
        int head = pen.row() - 1;
        for (String section : table.sections(true)) {
            pen.section(section, 4);
            table.headings(section, true).forEach((heading, figures) -> block(pen, heading, figures));
        }
        finish(pen, head, 4);
    }

    void writeLevels() {
        for (String section : table.sections(false)) {
            SheetPen pen = sheet(section);
            pen.wide(0, 5, section, Look.TITLE).height(24).next();
            pen.heads(texts.get("cost.figure"), ">" + texts.get("cost.value"), texts.get("cost.unit"), texts.get("cost.name"),
                    texts.get("cost.how"), texts.get("cost.source"));
            int head = pen.row() - 1;
            table.headings(section, false).forEach((heading, figures) -> block(pen, heading, figures));
            finish(pen, head, 5);
        }
    }

    private SheetPen sheet(String name) {
        SheetPen pen = book.sheet(name);
        pen.widths(44, 17, 13, 34, 54, 40);
        pen.sheet().setDefaultRowHeightInPoints(12.5f);
        return pen;
    }

    private void block(SheetPen pen, String heading, List<Figure> figures) {
        if (!heading.isEmpty()) {
            pen.text(0, heading, Look.TEXT_BOLD).height(16).next();
        }
        int first = pen.row();
        figures.forEach(f -> figure(pen, f));
        if (!heading.isEmpty() && pen.row() > first) {
            pen.sheet().groupRow(first, pen.row() - 1);
        }
    }

    private void figure(SheetPen pen, Figure f) {
        pen.text(0, f.label(), Look.TEXT);
        if (f.input()) {
            pen.number(VALUE, f.value(), f.unit().equals(page.currency()) ? Look.INPUT_MONEY : Look.INPUT);
            pen.text(2, unit(f), Look.TEXT).text(3, f.key(), Look.TEXT).text(4, f.source(), Look.TEXT);
        } else {
            pen.formula(VALUE, f.formula(), look(f)).text(2, unit(f), Look.TEXT).text(3, f.key(), Look.TEXT)
                    .text(4, spaced(f.formula()), Look.TEXT_WRAP).text(5, f.source(), Look.TEXT_WRAP);
            pen.fit(spaced(f.formula()), 53).fit(f.source(), 39);
        }
        name(pen, f);
        pen.next();
    }

    /** Money carries its currency in the number itself. */
    private String unit(Figure f) {
        return f.unit().equals(page.currency()) && (f.input() || look(f) != Look.GENERAL) ? "" : f.unit();
    }

    private void name(SheetPen pen, Figure f) {
        XSSFCell cell = pen.sheet().getRow(pen.row()).getCell(VALUE);
        XSSFName name = book.workbook().createName();
        name.setNameName(f.key());
        name.setRefersToFormula("'" + pen.sheet().getSheetName().replace("'", "''") + "'!$B$" + (pen.row() + 1));
        cells.put(f.key(), cell);
    }

    private Look look(Figure f) {
        String currency = page.currency();
        if (f.unit().equals(currency)) {
            if (f.key().endsWith("_per_hit")) {
                return Look.GENERAL;
            }
            boolean total = f.key().contains("_total_") || f.key().endsWith("_total") || f.key().contains("_price_");
            if (f.key().endsWith("_piece")) {
                return total ? Look.MONEY4_TOTAL : Look.MONEY4;
            }
            return total ? Look.MONEY_TOTAL : Look.MONEY;
        }
        return switch (f.unit()) {
            case "h", "kg", "min", "s" -> Look.DEC3;
            case "pcs" -> Look.COUNT;
            default -> f.unit().startsWith(currency + "/") ? Look.DEC2 : Look.GENERAL;
        };
    }

    /** The formula with blanks, so that it can break across lines. */
    private static String spaced(String formula) {
        return formula.replace(",", ", ").replace("+", " + ").replace("*", " * ").replace("/", " / ").replace("-", " - ");
    }

    private void finish(SheetPen pen, int head, int last) {
        pen.sheet().createFreezePane(1, head + 1);
        pen.sheet().setRowSumsBelow(false);
        pen.sheet().setAutoFilter(new CellRangeAddress(head, Math.max(head, pen.row() - 1), 0, last));
        page.apply(pen, 0, head);
    }
}
