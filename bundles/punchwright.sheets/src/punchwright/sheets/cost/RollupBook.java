// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.cost;

import java.io.IOException;
import java.util.List;
import java.util.Map;

import org.apache.poi.xssf.usermodel.XSSFCell;

import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.model.shop.Revision;
import punchwright.model.work.Order;
import punchwright.sheets.book.Book;
import punchwright.sheets.book.SheetPen;
import punchwright.sheets.book.Texts;

/** Puts the roll-up together, works every formula out and compares each result with the plan's value. */
public final class RollupBook {

    /** Half a cent: money is compared as printed. */
    private static final double TOLERANCE = 0.005;

    private final Order order;
    private final List<Plan> plans;
    private final Library library;
    private final Texts texts;

    public RollupBook(Order order, List<Plan> plans, Library library, Texts texts) {
        this.order = order;
        this.plans = plans;
        this.library = library;
        this.texts = texts;
    }

    /**
     * The workbook's bytes.
     *
     * @throws IllegalStateException when the workbook works a figure out differently from the plan
     */
    public byte[] bytes() throws IOException {
        FigureTable table = new FigureTable(plans);
        try (Book book = new Book(library.getCurrency())) {
            PageTexts page = page();
            SheetPen first = book.sheet(texts.get("cost.summary"));
            SheetPen charts = table.codes().isEmpty() ? null : book.sheet(texts.get("chart.sheet"));
            FigureSheets sheets = new FigureSheets(table, texts, book, page);
            sheets.writeInputs();
            sheets.writeLevels();
            SummarySheet summary = new SummarySheet(table, order, library, texts, first);
            summary.write(page, plans);
            book.describe(texts.get("cost.title") + " " + order.getNumber(), library.getName(), date());
            book.calculate();
            compare(table, sheets.cells());
            if (charts != null) {
                new ChartSheet(summary, first.sheet(), texts, library.getCurrency(), charts, table.cheapest()).write(page);
            }
            book.workbook().setActiveSheet(0);
            return book.bytes();
        }
    }

    private PageTexts page() {
        int revision = plans.isEmpty() ? 0 : plans.get(0).getLibraryRevision();
        String version = plans.isEmpty() || plans.get(0).getProgramVersion() == null ? "" : plans.get(0).getProgramVersion();
        return new PageTexts(library.getName() == null ? "" : library.getName(), texts.get("cost.title") + "  "
                + order.getNumber(),
                texts.get("process.footer", revision, version), texts.get("page"), library.getCurrency());
    }

    private String date() {
        int revision = plans.isEmpty() ? 0 : plans.get(0).getLibraryRevision();
        return library.getRevisions().stream().filter(r -> r.getNumber() == revision).map(Revision::getDate).findFirst()
                .orElse(order.getReceived());
    }

    private static void compare(FigureTable table, Map<String, XSSFCell> cells) {
        for (Figure figure : table.all()) {
            double inBook = cells.get(figure.key()).getNumericCellValue();
            if (!(Math.abs(inBook - figure.value()) <= TOLERANCE)) {
                throw new IllegalStateException("cost figure " + figure.key() + " (" + figure.label() + ") is " + figure.value()
                        + " in the plan and " + inBook + " by " + figure.formula() + "; plan the order again");
            }
        }
    }
}
