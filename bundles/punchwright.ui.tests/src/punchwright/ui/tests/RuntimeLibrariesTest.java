// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

/**
 * The spreadsheet library as the running product sees it: its parts find one another through optional imports and class loaders,
 * so that a missing one shows only at run time.
 */
class RuntimeLibrariesTest {

    @Test
    void workbookWithAFormulaIsWrittenReadAndCalculated() throws IOException {
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            Cell cell = workbook.createSheet("A").createRow(0).createCell(0);
            cell.setCellFormula("SUM(2,3)*4");
            workbook.write(file);
        }
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(file.toByteArray()))) {
            Cell cell = workbook.getSheet("A").getRow(0).getCell(0);
            assertEquals(20, workbook.getCreationHelper().createFormulaEvaluator().evaluate(cell).getNumberValue());
        }
    }
}
