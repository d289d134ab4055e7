// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.costing.CostCell;
import punchwright.engine.costing.CostSheet;
import punchwright.engine.costing.OrderCost;

/**
 * Validation by an independent program: LibreOffice Calc works out the workbook, whose stored values were taken away first,
 * and gives what the engine gives. Skipped where it is not installed, unless CI is set.
 */
class OtherProgramTest {

    private static final double HALF_A_CENT = 0.005;

    @TempDir
    Path folder;

    @Test
    void recalculatedFiguresEqualTheEngine() throws Exception {
        assumeTrue(installed() || System.getenv("CI") != null, "skipped: soffice (LibreOffice Calc) is not installed");
        SamplePlan sample = SamplePlan.create();
        CostSheet engine = sample.cost(Locale.ENGLISH, "TR30");
        compare(engine, recalculated(sample, Map.of()));
    }

    @Test
    void twentyChangedInputsRecalculatedEqualTheEngine() throws Exception {
        assumeTrue(installed() || System.getenv("CI") != null, "skipped: soffice (LibreOffice Calc) is not installed");
        SamplePlan sample = SamplePlan.create();
        sample.cost(Locale.ENGLISH, "TR30");
        Map<String, Double> changes = ChangedInputs.twenty();
        compare(OrderCost.calculate(sample.costJob(Locale.ENGLISH, "TR30", changes)), recalculated(sample, changes));
    }

    private static void compare(CostSheet engine, Path file) throws IOException {
        try (XSSFWorkbook book = Books.open(file)) {
            assertEquals(List.of(), Books.errors(book));
            for (CostCell figure : engine.cells()) {
                assertEquals(figure.value(), Books.named(book, figure.name()).getNumericCellValue(), HALF_A_CENT, figure.name());
            }
        }
    }

    private Path recalculated(SamplePlan sample, Map<String, Double> changes) throws Exception {
        Path file = folder.resolve("cost.xlsx");
        CostRollupWriter.write(sample.order, List.of(sample.plan), sample.library, Locale.ENGLISH, file);
        Path bare = folder.resolve("bare.xlsx");
        try (XSSFWorkbook book = Books.open(file); var out = Files.newOutputStream(bare)) {
            changes.forEach((name, value) -> Books.named(book, name).setCellValue(value));
            Books.forEachCell(book, cell -> {
                if (cell.getCellType() == CellType.FORMULA && ((XSSFCell) cell).getCTCell().isSetV()) {
                    ((XSSFCell) cell).getCTCell().unsetV();
                }
            });
            book.write(out);
        }
        Path converted = Files.createDirectories(folder.resolve("converted"));
        Process process = new ProcessBuilder("soffice", "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--convert-to", "xlsx", "--outdir", converted.toString(), bare.toString()).redirectErrorStream(true)
                .redirectOutput(folder.resolve("soffice.txt").toFile()).start();
        assertTrue(process.waitFor(180, TimeUnit.SECONDS), "LibreOffice did not end within 180 s");
        Path result = converted.resolve("bare.xlsx");
        assertTrue(Files.exists(result), Files.readString(folder.resolve("soffice.txt")));
        return result;
    }

    private static boolean installed() {
        return Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(dir -> Files.isExecutable(Path.of(dir, "soffice")));
    }
}
