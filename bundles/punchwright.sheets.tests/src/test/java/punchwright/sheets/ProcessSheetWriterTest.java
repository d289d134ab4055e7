// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;

import javax.imageio.ImageIO;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.model.plan.PlanStatus;
import punchwright.sheets.book.Texts;

/** The process sheet read back: what the floor needs is there, prints on A4, and no text turns into a formula. */
class ProcessSheetWriterTest {

    @TempDir
    Path folder;

    private final SamplePlan sample = SamplePlan.create();

    private XSSFWorkbook written(Locale locale) throws Exception {
        Path file = folder.resolve("process.xlsx");
        ProcessSheetWriter.write(sample.plan, sample.library, sample::outline, locale, file);
        return Books.open(file);
    }

    @Test
    void carriesEverythingTheFloorNeeds() throws Exception {
        try (XSSFWorkbook book = written(Locale.ENGLISH)) {
            List<String> sheets = new ArrayList<>();
            book.forEach(s -> sheets.add(s.getSheetName()));
            assertEquals(List.of("Process sheet", "Tools 1", "Operations 1", "Layout 1.1", "Release"), sheets);
            String text = Books.text(book);
            for (String wanted : List.of("Blechwerk Auental", "plan-2041-TR30", "J. Holm", "WB-2210", "DC01, EN 10130, 2 mm",
                    "rack 4-B",
                    "180   700   1,300", "1,320   1,800   2,400", "TOOLING-CLEARANCE", "No hit lies under a clamp", "ISO 16092-1",
                    "two persons or a lifting aid", "Released for the lot", "Slitting 56 x 5", "Holder for ten inserts · 2")) {
                assertTrue(text.contains(wanted), wanted);
            }
            assertEquals(List.of(), Books.errors(book));
        }
    }

    @Test
    void toolsStandByPlaceWithForceAndShareOfTheLimit() throws Exception {
        try (XSSFWorkbook book = written(Locale.ENGLISH)) {
            XSSFSheet tools = book.getSheet("Tools 1");
            Row second = tools.getRow(3);
            assertEquals(2, second.getCell(0).getNumericCellValue());
            assertEquals("T1", second.getCell(1).getStringCellValue());
            assertEquals(22.0, second.getCell(8).getNumericCellValue(), 1e-9);
            assertEquals(22.0 / 45, second.getCell(10).getNumericCellValue(), 1e-9);
            assertEquals(320, second.getCell(12).getNumericCellValue());
            assertEquals(9, tools.getLastRowNum());
        }
    }

    /** The sample's operations 1 to 3 and 6, 7 differ; two equal ones are added and share a row. */
    @Test
    void equalOperationsShareARow() throws Exception {
        var operations = sample.plan.getJobs().get(0).getOperations();
        for (int number : new int[] {9, 10, 12}) {
            var copy = org.eclipse.emf.ecore.util.EcoreUtil.copy(operations.get(0));
            copy.setNumber(number);
            operations.add(copy);
        }
        try (XSSFWorkbook book = written(Locale.ENGLISH)) {
            Row first = book.getSheet("Operations 1").getRow(2);
            assertEquals("1, 9-10, 12", first.getCell(0).getStringCellValue());
            assertEquals(4, first.getCell(6).getNumericCellValue());
            assertEquals(16, first.getCell(9).getNumericCellValue());
            assertEquals(9, book.getSheet("Operations 1").getLastRowNum());
        }
    }

    @Test
    void timesOfAllRunsAddUp() throws Exception {
        try (XSSFWorkbook book = written(Locale.ENGLISH)) {
            double minutes = 0;
            for (Row row : book.getSheetAt(0)) {
                if (row.getCell(0) != null && row.getCell(0).getCellType() == CellType.STRING
                        && "Total".equals(row.getCell(0).getStringCellValue())) {
                    minutes = row.getCell(8).getNumericCellValue();
                }
            }
            assertEquals((5 * 295.9 + 1440) / 60, minutes, 1e-9);
        }
    }

    @Test
    void printsOnA4LandscapeWithRepeatedHeadings() throws Exception {
        try (XSSFWorkbook book = written(Locale.ENGLISH)) {
            book.forEach(s -> {
                assertEquals(9, s.getPrintSetup().getPaperSize(), "9 is A4 in ISO/IEC 29500-1, 18.3.1.63");
                assertTrue(s.getPrintSetup().getLandscape(), s.getSheetName());
                assertTrue(s.getFitToPage() || s.getRowBreaks().length == 1 && s.getPrintSetup().getScale() <= 100,
                        s.getSheetName());
                assertTrue(s.getFooter().getRight().contains("&P / &N"));
            });
            assertEquals(1, book.getSheet("Tools 1").getRepeatingRows().getFirstRow());
        }
    }

    @Test
    void layoutPictureIsSharpAndKeepsItsSize() throws Exception {
        try (XSSFWorkbook book = written(Locale.ENGLISH)) {
            assertEquals(1, book.getAllPictures().size());
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(book.getAllPictures().get(0).getData()));
            assertEquals(268 / 25.4 * 400, image.getWidth(), 1.5);
            var ext = book.getSheet("Layout 1.1").createDrawingPatriarch().getCTDrawing().getOneCellAnchorArray(0).getExt();
            assertEquals((double) image.getHeight() / image.getWidth(), (double) ext.getCy() / ext.getCx(), 0.002);
            assertEquals(268 * 36_000L, ext.getCx());
        }
    }

    @Test
    void anUnprovenPlanSaysSo() throws Exception {
        sample.plan.setStatus(PlanStatus.INCOMPLETE);
        sample.plan.getChecks().clear();
        try (XSSFWorkbook book = written(Locale.ENGLISH)) {
            assertTrue(Books.text(book).contains("Not proven"));
        }
    }

    @Test
    void emptyPlanAndMissingRecordsStillGiveASheet() throws Exception {
        sample.plan.getJobs().get(0).getToolUses().get(0).setPlace(null);
        sample.plan.getJobs().get(0).getLayouts().get(0).setStock(null);
        sample.plan.getJobs().get(0).setMaterial(null);
        try (XSSFWorkbook book = written(Locale.ENGLISH)) {
            assertTrue(Books.text(book).contains("by hand"));
        }
        sample.plan.getJobs().clear();
        sample.plan.getFindings().clear();
        try (XSSFWorkbook book = written(Locale.GERMAN)) {
            assertTrue(Books.text(book).contains("Keine Befunde."));
            assertEquals(List.of(), Books.errors(book));
        }
    }

    @Test
    void textThatBeginsLikeAFormulaStaysText() throws Exception {
        sample.plan.getFindings().get(0).setMessage("=1+1");
        try (XSSFWorkbook book = written(Locale.ENGLISH)) {
            Books.forEachCell(book, cell -> {
                if (cell.getCellType() == CellType.STRING && cell.getStringCellValue().equals("=1+1")) {
                    assertTrue(cell.getCellStyle().getQuotePrefixed());
                }
            });
            assertTrue(Books.text(book).contains("=1+1"));
        }
    }

    @Test
    void theSamePlanGivesTheSameBytes() throws Exception {
        written(Locale.ENGLISH).close();
        byte[] first = Files.readAllBytes(folder.resolve("process.xlsx"));
        Thread.sleep(2100);
        written(Locale.ENGLISH).close();
        assertArrayEquals(first, Files.readAllBytes(folder.resolve("process.xlsx")));
    }

    @Test
    void textsHaveTheSameKeysAndPlaceholdersInBothLanguages() throws Exception {
        Properties en = load("texts.properties");
        Properties de = load("texts_de.properties");
        assertEquals(new TreeSet<>(en.stringPropertyNames()), new TreeSet<>(de.stringPropertyNames()));
        for (String key : en.stringPropertyNames()) {
            assertEquals(places(en.getProperty(key)), places(de.getProperty(key)), key);
        }
    }

    private static Properties load(String name) throws Exception {
        Properties p = new Properties();
        try (var in = Texts.class.getResourceAsStream(name)) {
            p.load(in);
        }
        return p;
    }

    private static List<String> places(String text) {
        return Pattern.compile("\\{\\d+}").matcher(text).results().map(m -> m.group()).sorted().toList();
    }
}
