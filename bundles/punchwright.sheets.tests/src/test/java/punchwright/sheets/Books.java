// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Reading workbooks back. */
final class Books {

    private Books() {
    }

    static XSSFWorkbook open(Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            return new XSSFWorkbook(in);
        }
    }

    static XSSFCell named(XSSFWorkbook book, String name) {
        var found = book.getName(name);
        if (found == null) {
            throw new AssertionError("no cell is named " + name);
        }
        CellReference at = new CellReference(found.getRefersToFormula());
        return book.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
    }

    static void forEachCell(XSSFWorkbook book, Consumer<Cell> work) {
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                row.forEach(work);
            }
        }
    }

    /** Addresses of cells that hold or show an error. */
    static List<String> errors(XSSFWorkbook book) {
        List<String> errors = new ArrayList<>();
        forEachCell(book, cell -> {
            boolean formulaError = cell.getCellType() == CellType.FORMULA && cell.getCachedFormulaResultType() == CellType.ERROR;
            if (cell.getCellType() == CellType.ERROR || formulaError) {
                errors.add(cell.getSheet().getSheetName() + "!" + cell.getAddress());
            }
        });
        return errors;
    }

    /** All text of the workbook, one cell a line. */
    static String text(XSSFWorkbook book) {
        StringBuilder all = new StringBuilder();
        forEachCell(book, cell -> {
            if (cell.getCellType() == CellType.STRING) {
                all.append(cell.getStringCellValue()).append('\n');
            }
        });
        return all.toString();
    }
}
