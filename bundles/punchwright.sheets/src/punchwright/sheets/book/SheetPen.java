// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.book;

import java.time.LocalDate;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes one sheet row by row; text is always text, whatever it begins with. */
public final class SheetPen {

    private static final int LONGEST_TEXT = 32_000;
    /** Header and footer take 255 characters in all. */
    private static final int LONGEST_HEADER = 90;
    private static final double POINTS_PER_LINE = 12;
    /** Room that the indent of a heading takes, in digits. */
    private static final double HEAD_RIM = 1.5;
    /** Height of a landscape A4 page between our margins, and of the row repeated on later pages. */
    private static final double PAGE_HEIGHT_POINTS = 490;
    private static final double REPEATED_POINTS = 26;
    /** Landscape A4 between our margins, mm, and the width of a character and a column's rim at 96 dots an inch. */
    private static final double PAGE_WIDTH_MM = 274;
    private static final double MM_PER_CHARACTER = 7 * 25.4 / 96;
    private static final double MM_PER_COLUMN = 5 * 25.4 / 96;

    private final Book book;
    private final XSSFSheet sheet;
    private int row;
    private int pageStart;

    SheetPen(Book book, XSSFSheet sheet) {
        this.book = book;
        this.sheet = sheet;
    }

    public XSSFSheet sheet() {
        return sheet;
    }

    /** The row that is being written, from 0. */
    public int row() {
        return row;
    }

    public SheetPen next() {
        row++;
        return this;
    }

    public SheetPen skip(int rows) {
        row += rows;
        return this;
    }

    /** Widths of the columns in characters. */
    public SheetPen widths(double... characters) {
        for (int i = 0; i < characters.length; i++) {
            sheet.setColumnWidth(i, (int) Math.round(characters[i] * 256));
        }
        return this;
    }

    public SheetPen height(double points) {
        row(row).setHeightInPoints((float) points);
        return this;
    }

    /** Raises the row so that a text fits that is broken at this width, in digits. */
    public SheetPen fit(String text, double digits) {
        float points = (float) (TextSize.lines(text, digits, false) * POINTS_PER_LINE + 2);
        XSSFRow r = row(row);
        if (r.getHeightInPoints() < points) {
            r.setHeightInPoints(points);
        }
        return this;
    }

    public SheetPen text(int column, String text, Look look) {
        XSSFCell cell = cell(column, look);
        String shown = text == null ? "" : text.length() > LONGEST_TEXT ? text.substring(0, LONGEST_TEXT) + " ..." : text;
        cell.setCellValue(shown);
        if (!shown.isEmpty() && "=+-@\t\r\n".indexOf(shown.charAt(0)) >= 0) {
            cell.setCellStyle(book.styles().quoted(cell.getCellStyle()));
        }
        return this;
    }

    public SheetPen number(int column, double value, Look look) {
        cell(column, look).setCellValue(value);
        return this;
    }

    /** A number, or an empty cell for 0 that means "not given". */
    public SheetPen numberOrBlank(int column, double value, Look look) {
        if (value == 0) {
            cell(column, look);
            return this;
        }
        return number(column, value, look);
    }

    /** A true date, or the text as it is when it is none. */
    public SheetPen date(int column, String iso, Look textLook) {
        LocalDate date = Book.date(iso).orElse(null);
        if (date == null) {
            return text(column, iso, textLook);
        }
        cell(column, Look.DATE).setCellValue(date);
        return this;
    }

    /** A formula without "=". */
    public SheetPen formula(int column, String formula, Look look) {
        cell(column, look).setCellFormula(formula);
        return this;
    }

    /** One cell over several columns. */
    public SheetPen wide(int from, int to, String text, Look look) {
        for (int c = from + 1; c <= to; c++) {
            cell(c, look);
        }
        text(from, text, look);
        if (to > from) {
            sheet.addMergedRegionUnsafe(new CellRangeAddress(row, row, from, to));
        }
        return this;
    }

    /** A heading with a rule under it over the columns 0 to last. */
    public SheetPen section(String text, int last) {
        for (int c = 0; c <= last; c++) {
            cell(c, Look.SECTION);
        }
        text(0, text, Look.SECTION);
        height(18);
        return next();
    }

    /** Column headings; names that begin with ">" stand right. */
    public SheetPen heads(String... names) {
        int lines = 1;
        for (int c = 0; c < names.length; c++) {
            boolean right = names[c].startsWith(">");
            String name = right ? names[c].substring(1) : names[c];
            text(c, name, right ? Look.HEAD_RIGHT : Look.HEAD);
            double chars = sheet.getColumnWidth(c) / 256.0;
            lines = Math.max(lines, TextSize.lines(name, chars - HEAD_RIM, true));
        }
        height(lines * POINTS_PER_LINE + 4);
        return next();
    }

    /** Headings over several columns: each begins at its column and reaches to the next one, the last to {@code last}. */
    public SheetPen heads(int[] from, int last, String... names) {
        int lines = 1;
        for (int i = 0; i < from.length; i++) {
            boolean right = names[i].startsWith(">");
            String name = right ? names[i].substring(1) : names[i];
            int to = i + 1 < from.length ? from[i + 1] - 1 : last;
            wide(from[i], to, name, right ? Look.HEAD_RIGHT : Look.HEAD);
            double chars = 0;
            for (int c = from[i]; c <= to; c++) {
                chars += sheet.getColumnWidth(c) / 256.0;
            }
            lines = Math.max(lines, TextSize.lines(name, chars - HEAD_RIM, true));
        }
        height(lines * POINTS_PER_LINE + 4);
        return next();
    }

    /** Begins a new page when so many points do not fit on this one any more, so that a table stays whole. */
    public SheetPen keep(double points) {
        if (pointsSince(pageStart) + points > PAGE_HEIGHT_POINTS / scale() && row > pageStart + 1) {
            pageBreak();
        }
        return this;
    }

    /** Points of a table with a section heading and so many rows. */
    public static double table(int rows) {
        return 46 + 15.5 * rows;
    }

    /** A new page begins with this row. Fitting to pages ignores such breaks, so the width is met by a scale instead. */
    public SheetPen pageBreak() {
        sheet.setRowBreak(row - 1);
        pageStart = row;
        sheet.setFitToPage(false);
        sheet.getPrintSetup().setScale((short) Math.floor(100 * scale()));
        return this;
    }

    private double pointsSince(int first) {
        double points = first > 0 ? REPEATED_POINTS : 0;
        for (int r = first; r < row; r++) {
            points += sheet.getRow(r) == null ? sheet.getDefaultRowHeightInPoints() : sheet.getRow(r).getHeightInPoints();
        }
        return points;
    }

    /** Scale at which the columns in use fit the page's width, at most 1. */
    private double scale() {
        double wide = 0;
        for (int c = 0; sheet.getRow(0) != null && c < sheet.getRow(0).getLastCellNum(); c++) {
            wide += sheet.getColumnWidth(c) / 256.0 * MM_PER_CHARACTER + MM_PER_COLUMN;
        }
        return wide > 0 ? Math.max(0.1, Math.min(1, PAGE_WIDTH_MM / wide)) : 1;
    }

    public XSSFCellStyle style(Look look) {
        return book.styles().of(look);
    }

    public XSSFCell cell(int column, Look look) {
        XSSFCell cell = row(row).getCell(column);
        if (cell == null) {
            cell = row(row).createCell(column);
        }
        cell.setCellStyle(book.styles().of(look));
        return cell;
    }

    private XSSFRow row(int index) {
        XSSFRow r = sheet.getRow(index);
        return r == null ? sheet.createRow(index) : r;
    }

    /**
     * Page set-up: A4, one page wide, as many high as needed.
     *
     * @param titleFrom first row repeated on each page, or -1
     * @param header    left, centre, right of the header; "&" in texts is doubled here, page numbers are added to the footer
     */
    public SheetPen page(boolean landscape, int titleFrom, int titleTo, String left, String right, String footer,
            String pageWord) {
        var setup = sheet.getPrintSetup();
        setup.setPaperSize(PrintSetup.A4_PAPERSIZE);
        setup.setLandscape(landscape);
        sheet.setFitToPage(true);
        setup.setFitWidth((short) 1);
        setup.setFitHeight((short) 0);
        sheet.setMargin(PageMargin.LEFT, 0.5);
        sheet.setMargin(PageMargin.RIGHT, 0.4);
        sheet.setMargin(PageMargin.TOP, 0.7);
        sheet.setMargin(PageMargin.BOTTOM, 0.6);
        sheet.setMargin(PageMargin.HEADER, 0.3);
        sheet.setMargin(PageMargin.FOOTER, 0.3);
        sheet.setHorizontallyCenter(true);
        sheet.getHeader().setLeft("&8" + plain(left));
        sheet.getHeader().setRight("&8" + plain(right));
        sheet.getFooter().setLeft("&8" + plain(footer));
        sheet.getFooter().setRight("&8" + plain(pageWord) + " &P / &N");
        if (titleFrom >= 0) {
            sheet.setRepeatingRows(new CellRangeAddress(titleFrom, titleTo, -1, -1));
        }
        return this;
    }

    /** A text in a header: "&" doubled, and a leading digit parted from the size code. */
    private static String plain(String text) {
        String shown = text.length() > LONGEST_HEADER ? text.substring(0, LONGEST_HEADER) + "..." : text;
        String doubled = shown.replace("&", "&&");
        return !doubled.isEmpty() && Character.isDigit(doubled.charAt(0)) ? " " + doubled : doubled;
    }
}
