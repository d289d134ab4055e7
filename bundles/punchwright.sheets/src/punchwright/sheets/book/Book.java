// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.book;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Date;
import java.util.HashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** One workbook under way: its styles, its sheet names, and its bytes with fixed properties. */
public final class Book implements AutoCloseable {

    private static final LocalDate NO_DATE = LocalDate.of(2000, 1, 1);

    private final XSSFWorkbook book = new XSSFWorkbook();
    private final Styles styles;
    private final Set<String> names = new HashSet<>();

    public Book(String currency) {
        styles = new Styles(book, currency);
    }

    public XSSFWorkbook workbook() {
        return book;
    }

    Styles styles() {
        return styles;
    }

    /** A new sheet; the name is made safe, short enough and unique. */
    public SheetPen sheet(String wanted) {
        String safe = WorkbookUtil.createSafeSheetName(wanted);
        String name = safe;
        for (int n = 2; !names.add(name.toLowerCase(Locale.ROOT)); n++) {
            String tail = " " + n;
            name = safe.substring(0, Math.min(safe.length(), 31 - tail.length())) + tail;
        }
        XSSFSheet sheet = book.createSheet(name);
        sheet.setDisplayGridlines(false);
        return new SheetPen(this, sheet);
    }

    /** Title, maker and date of the file; the date is the plan's, never today's. */
    public void describe(String title, String creator, String isoDate) {
        var core = book.getProperties().getCoreProperties();
        core.setTitle(title);
        core.setCreator(creator);
        core.setLastModifiedByUser(creator);
        Optional<Date> date = Optional.of(Date.from(date(isoDate).orElse(NO_DATE).atStartOfDay(ZoneOffset.UTC).toInstant()));
        core.setCreated(date);
        core.setModified(date);
        book.getProperties().getExtendedProperties().getUnderlyingProperties().setApplication("Punchwright");
    }

    /** A date as yyyy-MM-dd; empty when it is none. */
    public static Optional<LocalDate> date(String iso) {
        try {
            return iso == null || iso.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(iso));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** Works every formula out and stores the values, so that a viewer that cannot calculate shows them. */
    public void calculate() {
        book.getCreationHelper().createFormulaEvaluator().evaluateAll();
    }

    public byte[] bytes() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        book.write(out);
        return out.toByteArray();
    }

    @Override
    public void close() throws IOException {
        book.close();
    }
}
