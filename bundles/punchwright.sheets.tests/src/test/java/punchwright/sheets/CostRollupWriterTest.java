// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.costing.CostCell;
import punchwright.engine.costing.CostSheet;
import punchwright.engine.costing.OrderCost;
import punchwright.model.plan.Plan;

/** The roll-up read back: formulas on named cells only, equal to the engine, alive when inputs change. */
class CostRollupWriterTest {

    private static final double HALF_A_CENT = 0.005;

    @TempDir
    Path folder;

    private final SamplePlan sample = SamplePlan.create();
    private final CostSheet engine = sample.cost(Locale.ENGLISH, "TR30");

    private XSSFWorkbook written(Plan... plans) throws Exception {
        Path file = folder.resolve("cost.xlsx");
        CostRollupWriter.write(sample.order, List.of(plans), sample.library, Locale.ENGLISH, file);
        return Books.open(file);
    }

    @Test
    void everyFigureOfTheEngineIsANamedCellWithItsValue() throws Exception {
        try (XSSFWorkbook book = written(sample.plan)) {
            for (CostCell figure : engine.cells()) {
                XSSFCell cell = Books.named(book, figure.name());
                assertEquals(figure.value(), cell.getNumericCellValue(), 1e-9, figure.name());
                assertEquals(figure.isInput() ? CellType.NUMERIC : CellType.FORMULA, cell.getCellType(), figure.name());
            }
            assertEquals(engine.cells().size(), book.getNumberOfNames() - printNames(book));
        }
    }

    private static long printNames(XSSFWorkbook book) {
        return book.getAllNames().stream().filter(n -> n.getNameName().startsWith("_xlnm")).count();
    }

    @Test
    void noNumberIsPastedOutsideTheInputs() throws Exception {
        try (XSSFWorkbook book = written(sample.plan)) {
            List<String> pasted = new ArrayList<>();
            Books.forEachCell(book, cell -> {
                boolean lineNumber = cell.getColumnIndex() == 0;
                if (cell.getCellType() == CellType.NUMERIC && !"Inputs".equals(cell.getSheet().getSheetName()) && !lineNumber) {
                    pasted.add(cell.getSheet().getSheetName() + "!" + cell.getAddress());
                }
            });
            assertEquals(List.of(), pasted);
            assertEquals(List.of(), Books.errors(book));
        }
    }

    @Test
    void twentyChangedInputsGiveWhatTheEngineGives() throws Exception {
        Map<String, Double> changes = ChangedInputs.twenty();
        CostSheet changed = OrderCost.calculate(sample.costJob(Locale.ENGLISH, "TR30", changes));
        try (XSSFWorkbook book = written(sample.plan)) {
            changes.forEach((name, value) -> Books.named(book, name).setCellValue(value));
            book.getCreationHelper().createFormulaEvaluator().evaluateAll();
            for (CostCell figure : changed.cells()) {
                assertEquals(figure.value(), Books.named(book, figure.name()).getNumericCellValue(), HALF_A_CENT, figure.name());
            }
            assertTrue(Math.abs(changed.value("TR30_M_order_total") - engine.value("TR30_M_order_total")) > 10);
        }
    }

    @Test
    void machinesStandSideBySideWithSharedInputsOnce() throws Exception {
        SamplePlan other = SamplePlan.create("SH20", "Single head press 20");
        other.cost(Locale.ENGLISH, "SH20");
        try (XSSFWorkbook book = written(sample.plan, other.plan)) {
            assertEquals(1, book.getAllNames().stream().filter(n -> n.getNameName().equals("R_labour")).count());
            assertEquals(Books.named(book, "TR30_M_order_total").getNumericCellValue(),
                    Books.named(book, "SH20_M_order_total").getNumericCellValue(), 1e-9);
            assertTrue(Books.text(book).contains("Single head press 20"));
        }
    }

    @Test
    void plansOfDifferentLibrariesAreRefused() {
        SamplePlan other = SamplePlan.create("SH20", "Single head press 20");
        other.cost(Locale.ENGLISH, "SH20");
        other.plan.getFigures().stream().filter(f -> f.getKey().equals("R_labour")).forEach(f -> f.setValue(99));
        SheetException e = assertThrows(SheetException.class, () -> written(sample.plan, other.plan));
        assertTrue(e.getMessage().contains("R_labour") && e.getMessage().contains("cost.xlsx"), e.getMessage());
        assertFalse(Files.exists(folder.resolve("cost.xlsx")));
    }

    @Test
    void aFigureThatItsFormulaDoesNotGiveIsRefused() {
        sample.plan.getFigures().stream().filter(f -> f.getKey().equals("TR30_M_order_total"))
                .forEach(f -> f.setValue(f.getValue() + 1));
        SheetException e = assertThrows(SheetException.class, () -> written(sample.plan));
        assertTrue(e.getMessage().contains("TR30_M_order_total"), e.getMessage());
    }

    @Test
    void aMachineThatCannotMakeItIsListedWithItsReason() throws Exception {
        SamplePlan other = SamplePlan.create("SH20", "Single head press 20");
        var finding = punchwright.model.plan.PlanFactory.eINSTANCE.createFinding();
        finding.setSeverity(punchwright.model.plan.Severity.ERROR);
        finding.setSubject("DC01 2.00 mm, stock");
        finding.setMessage("The sheet is longer than the machine takes.");
        other.plan.getFindings().add(0, finding);
        try (XSSFWorkbook book = written(sample.plan, other.plan)) {
            String text = Books.text(book);
            assertTrue(text.contains("Machines that cannot make it")
                    && text.contains("DC01 2.00 mm, stock: The sheet is longer than the machine takes."));
        }
        try (XSSFWorkbook book = written(other.plan)) {
            assertTrue(Books.text(book).contains("No machine can make this order"));
            assertEquals(List.of(), Books.errors(book));
        }
    }

    @Test
    void textThatBeginsLikeAFormulaStaysText() throws Exception {
        sample.order.setName("=HYPERLINK(\"x\")");
        sample.order.setCustomer("@cmd");
        sample.cover.setNumber("+1");
        sample.cover.setName("-2");
        try (XSSFWorkbook book = written(sample.plan)) {
            List<String> found = new ArrayList<>();
            Books.forEachCell(book, cell -> {
                if (cell.getCellType() == CellType.STRING && cell.getStringCellValue().matches("(?s)[=+@-].*")) {
                    found.add(cell.getStringCellValue());
                    assertTrue(cell.getCellStyle().getQuotePrefixed(), cell.getStringCellValue());
                }
                assertTrue(cell.getCellType() != CellType.FORMULA || !cell.getCellFormula().contains("HYPERLINK"));
            });
            assertTrue(found.containsAll(List.of("=HYPERLINK(\"x\")", "@cmd", "+1 -2")), found.toString());
        }
    }

    @Test
    void printsOnA4WithTitlesAndFrozenPanes() throws Exception {
        try (XSSFWorkbook book = written(sample.plan)) {
            book.forEach(sheet -> {
                assertEquals(9, sheet.getPrintSetup().getPaperSize(), "9 is A4 in ISO/IEC 29500-1, 18.3.1.63");
                assertEquals(1, sheet.getPrintSetup().getFitWidth());
                assertTrue(sheet.getRepeatingRows() != null, sheet.getSheetName());
            });
            assertTrue(book.getSheet("Inputs").getPaneInformation().isFreezePane());
            assertEquals("2026-03-02T00:00:00Z", book.getProperties().getCoreProperties().getCreated().toInstant().toString());
        }
    }

    @Test
    void carriesNoMacroAndNoOutsideLink() throws Exception {
        try (XSSFWorkbook book = written(sample.plan)) {
            assertFalse(book.isMacroEnabled());
            assertTrue(book.getPackage().getPartsByName(java.util.regex.Pattern.compile("/xl/externalLinks/.*")).isEmpty());
            for (var part : book.getPackage().getParts()) {
                for (var link : part.isRelationshipPart() ? List.<org.apache.poi.openxml4j.opc.PackageRelationship>of()
                        : part.getRelationships()) {
                    assertEquals(org.apache.poi.openxml4j.opc.TargetMode.INTERNAL, link.getTargetMode(), part.toString());
                }
            }
        }
    }

    @Test
    void theSamePlanGivesTheSameBytes() throws Exception {
        written(sample.plan).close();
        byte[] first = Files.readAllBytes(folder.resolve("cost.xlsx"));
        Thread.sleep(2100);
        written(sample.plan).close();
        assertArrayEquals(first, Files.readAllBytes(folder.resolve("cost.xlsx")));
    }

    @Test
    void germanWordsAndEnglishFormulas() throws Exception {
        sample.cost(Locale.GERMAN, "TR30");
        Path file = folder.resolve("kosten.xlsx");
        CostRollupWriter.write(sample.order, List.of(sample.plan), sample.library, Locale.GERMAN, file);
        try (XSSFWorkbook book = Books.open(file)) {
            assertTrue(book.getSheet("Eingaben") != null && book.getSheet("Übersicht") != null);
            assertTrue(Books.named(book, "TR30_M_L1_material_lot").getCellFormula().startsWith("ROUND("));
        }
    }
}
