// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.function.Function;

import punchwright.model.plan.Layout;
import punchwright.model.plan.Plan;
import punchwright.model.plan.SheetJob;
import punchwright.model.shop.Library;
import punchwright.model.work.Part;
import punchwright.sheets.book.Book;
import punchwright.sheets.book.Texts;
import punchwright.sheets.book.WorkbookFile;
import punchwright.sheets.process.LayoutSheet;
import punchwright.sheets.process.OperationSheet;
import punchwright.sheets.process.OverviewSheet;
import punchwright.sheets.process.ProcessPages;
import punchwright.sheets.process.ReleaseSheet;
import punchwright.sheets.process.ToolSheet;

/**
 * Writes the process sheet of a plan: what the floor needs to set up and run it, for print on A4.
 *
 * <p>Sheets of the workbook: overview with title block (ISO 7200), order, material and stock, times, revisions; for each
 * material and thickness the tools by place and the operations; for each layout its picture, parts, holdings and times;
 * release with findings, checks passed, cautions and sign-off.
 */
public final class ProcessSheetWriter {

    private ProcessSheetWriter() {
    }

    /** Name of the file of a plan's process sheet. */
    public static String fileName(Plan plan) {
        return WorkbookFile.name("process-sheet", plan.getOrder().getNumber(), plan.getMachine().getId());
    }

    /**
     * Writes the workbook.
     *
     * @param plan     what is to be made
     * @param library  the library whose revision made the plan
     * @param outlines drawn edges of each part for the pictures; may give null for a part
     * @param locale   language, English or German
     * @param file     where to; replaced when it stands already
     * @throws SheetException when the file cannot be written, with the way out; an earlier file then stands unharmed
     */
    public static void write(Plan plan, Library library, Function<Part, PartOutline> outlines, Locale locale, Path file)
            throws SheetException {
        Texts texts = new Texts(locale);
        try (Book book = new Book(library.getCurrency())) {
            ProcessPages pages = new ProcessPages(plan, library, outlines, texts, book);
            OverviewSheet.write(pages);
            for (int job = 0; job < plan.getJobs().size(); job++) {
                SheetJob work = plan.getJobs().get(job);
                ToolSheet.write(pages, work, job + 1);
                OperationSheet.write(pages, work, job + 1);
                for (Layout layout : work.getLayouts()) {
                    LayoutSheet.write(pages, work, job + 1, layout);
                }
            }
            ReleaseSheet.write(pages);
            book.calculate();
            book.describe(texts.get("process.title") + " " + pages.number(), library.getName(), pages.date());
            new WorkbookFile(texts).write(file, book.bytes());
        } catch (SheetException e) {
            throw e;
        } catch (IOException e) {
            throw new SheetException(file, texts.get("file.failed.message", e.getMessage()), texts.get("file.failed.remedy"), e);
        }
    }
}
