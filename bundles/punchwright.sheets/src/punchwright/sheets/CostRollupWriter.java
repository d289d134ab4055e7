// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import punchwright.model.plan.Plan;
import punchwright.model.shop.Library;
import punchwright.model.work.Order;
import punchwright.sheets.book.Texts;
import punchwright.sheets.book.WorkbookFile;
import punchwright.sheets.cost.RollupBook;

/**
 * Writes the cost roll-up of an order with every plan that makes it.
 *
 * <p>Sheets of the workbook: summary for management (machines compared, cost by kind for lot and piece, other lots), inputs,
 * and one sheet for each level of the calculation. Each figure of {@link Plan#getFigures()} is a cell named by its key;
 * inputs are numbers, all else is a formula on named cells. Values are stored with the formulas, so that a viewer that cannot
 * calculate shows them.
 */
public final class CostRollupWriter {

    private CostRollupWriter() {
    }

    /** Name of the file of an order's roll-up. */
    public static String fileName(Order order) {
        return WorkbookFile.name("cost-roll-up", order.getNumber());
    }

    /**
     * Writes the workbook.
     *
     * @param order   the order
     * @param plans   its plans, one a machine; those without cost are listed with their first error
     * @param library the library whose revision made the plans
     * @param locale  language, English or German; labels of figures come from the plan in its own language
     * @param file    where to; replaced when it stands already
     * @throws SheetException when the file cannot be written or the plans contradict each other, with the way out
     */
    public static void write(Order order, List<Plan> plans, Library library, Locale locale, Path file) throws SheetException {
        Texts texts = new Texts(locale);
        try {
            new WorkbookFile(texts).write(file, new RollupBook(order, plans, library, texts).bytes());
        } catch (IllegalArgumentException | IllegalStateException e) {
            throw new SheetException(file, e.getMessage() + ".", texts.get("file.stale.remedy"), e);
        } catch (SheetException e) {
            throw e;
        } catch (IOException e) {
            throw new SheetException(file, texts.get("file.failed.message", e.getMessage()), texts.get("file.failed.remedy"), e);
        }
    }
}
