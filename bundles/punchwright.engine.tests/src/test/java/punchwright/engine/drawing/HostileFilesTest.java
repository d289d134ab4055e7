// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.Severity;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.outside.OutsideData;

/** Validation: what hostile files must give is written in their manifest; here are the words that the findings must say. */
class HostileFilesTest {

    /**
     * A file: what it must end in (E error, W warning, S success), loops (-1 not stated), size in mm, words that must be said.
     */
    private record Row(String file, String ends, int loops, double width, double height, String... words) {
    }

    private static final List<Row> ROWS = List.of(new Row("01_empty", "E", -1, 0, 0, "empty"),
            new Row("02_not_a_dxf", "E", -1, 0, 0, "not a DXF"), new Row("03_no_geometry", "E", -1, 0, 0, "no contour"),
            new Row("04_truncated_in_entity", "W", 1, 200, 100, "ends early", "CIRCLE"),
            new Row("05_truncated_after_code", "W", 2, 200, 100, "ends early"),
            new Row("06_binary_truncated", "WE", -1, 0, 0, "ends early"), new Row("07_binary_r2000", "S", 2, 200, 100),
            new Row("08_binary_r12", "W", 2, 200, 100, "not stated"), new Row("09_codepage_1251", "S", 2, 200, 100),
            new Row("10_utf8_bom_ac1027", "S", 2, 200, 100), new Row("11_unicode_escape", "S", 2, 200, 100),
            new Row("12_wrong_codepage", "W", 2, 200, 100, "code page"), new Row("13_huge_coordinates", "S", 2, 200, 100),
            new Row("14_nan_inf", "W", 2, 200, 100, "\"NaN\"", "\"1.#QNAN\"", "\"1e999\""),
            new Row("15_decimal_comma", "WE", -1, 0, 0, "0,5"), new Row("16_exponents_and_spaces", "S", 2, 200, 100),
            new Row("17_zero_length", "W", 2, 200, 100, "without extent ignored"),
            new Row("18_duplicates", "W", 2, 200, 100, "duplicates dropped"),
            new Row("19_overlapping_lines", "W", 2, 200, 100, "2 lines or arcs lie on"),
            new Row("20_gap_half_mm", "WE", -1, 0, 0, "open", "0.5 mm"), new Row("21_gap_5_micron", "S", 2, 200, 100),
            new Row("22_bow_tie", "WE", -1, 0, 0, "crosses itself", "(100, 50)"),
            new Row("23_touching_holes", "W", 4, 0, 0, "cross near (0,", "touch at (100, 50)"),
            new Row("24_islands", "S", 4, 200, 100), new Row("25_interleaved_no_header", "W", 2, 200, 100, "not stated"),
            new Row("26_cr_only", "S", 2, 200, 100), new Row("27_crlf_comments_trailing", "SW", 2, 200, 100),
            new Row("28_unknown_entities", "W", 2, 200, 100, "ACAD_TABLE", "WHATEVER"),
            new Row("29_paper_space", "S", 2, 200, 100),
            new Row("30_missing_block", "W", 2, 200, 100, "NOWHERE"), new Row("31_block_cycle", "WE", -1, 0, 0, "holds itself"),
            new Row("32_block_bomb", "E", -1, 0, 0, "limit"), new Row("33_block_array_mirrored", "S", 33, 200, 100),
            new Row("34_extrusion_minus_z", "S", 4, 200, 100), new Row("35_bulges", "S", 4, 200, 100),
            new Row("36_inches", "S", 2, 101.6, 50.8), new Row("37_unit_conflict", "W", 2, 5080, 2540, "doubtful"),
            new Row("38_z_and_tilt", "W", 2, 200, 100, "upright"), new Row("39_ellipse_spline", "W", 3, 200, 100, "SPLINE"),
            new Row("40_100k_entities", "S", 25000, 1998, 1248), new Row("41_one_contour_50k_vertices", "S", 1, 800, 800),
            new Row("42_long_value", "S", 2, 200, 100), new Row("43_negative_and_bad_codes", "WE", 2, 200, 100, "group code"));

    @Test
    void everyFileGivesWhatTheManifestSays() throws IOException {
        Path folder = OutsideData.folder("nasty");
        List<String> wrong = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(files.filter(f -> f.toString().endsWith(".dxf")).count(), ROWS.size());
        }
        for (Row row : ROWS) {
            Assertions.assertTimeoutPreemptively(Duration.ofSeconds(60),
                    () -> check(folder.resolve(row.file() + ".dxf"), row, wrong));
        }
        assertEquals(List.of(), wrong);
    }

    private static void check(Path file, Row row, List<String> wrong) {
        List<Finding> findings = new ArrayList<>();
        String end;
        try {
            DrawingResult r = DrawingReader.read(file, DrawingOptions.USUAL);
            findings.addAll(r.findings());
            boolean error = findings.stream().anyMatch(Finding::isError);
            boolean warned = findings.stream().anyMatch(f -> f.severity() == Severity.WARNING);
            end = error && row.ends().contains("E") ? "E" : error || warned ? "W" : "S";
            measure(r, row, wrong);
        } catch (DrawingException e) {
            findings.add(e.finding());
            findings.addAll(e.others());
            end = "E";
        }
        String said = String.join("\n", findings.stream().map(Finding::message).toList());
        if (!row.ends().contains(end)) {
            wrong.add(row.file() + " ends in " + end + ": " + said);
        }
        for (String word : row.words()) {
            if (!said.contains(word)) {
                wrong.add(row.file() + " does not say '" + word + "': " + said);
            }
        }
    }

    private static void measure(DrawingResult r, Row row, List<String> wrong) {
        Bounds box = r.loops().stream().map(Contour::bounds).reduce(Bounds.EMPTY, Bounds::including);
        if (row.loops() >= 0 && r.loops().size() != row.loops()) {
            wrong.add(row.file() + " has " + r.loops().size() + " loops");
        }
        if (row.width() > 0 && (Math.abs(box.width() - row.width()) > 1e-4 || Math.abs(box.height() - row.height()) > 1e-4)) {
            wrong.add(row.file() + " measures " + box.width() + " x " + box.height());
        }
    }

    @Test
    void particularFigures() throws DrawingException {
        Path folder = OutsideData.folder("nasty");
        Map<String, Double> areas = Map.of("41_one_contour_50k_vertices", 502654.82, "24_islands",
                20000 - 9600 + 3200 - 100 * Math.PI, "13_huge_coordinates", 20000 - 100 * Math.PI);
        for (Map.Entry<String, Double> e : areas.entrySet()) {
            DrawingResult r = DrawingReader.read(folder.resolve(e.getKey() + ".dxf"), DrawingOptions.USUAL);
            assertEquals(e.getValue(), r.areaMm2(), e.getKey().startsWith("24") ? 400 : 0.01, e.getKey());
        }
        DrawingResult duplicates = DrawingReader.read(folder.resolve("18_duplicates.dxf"), DrawingOptions.USUAL);
        assertEquals(662.831853, duplicates.cutLengthMm(), 1e-6);
        DrawingResult array = DrawingReader.read(folder.resolve("33_block_array_mirrored.dxf"), DrawingOptions.USUAL);
        assertEquals(16, array.circleDiametersMm().stream().filter(d -> Math.abs(d - 4) < 1e-9).count());
        assertTrue(array.shapes().get(0).holes().size() == 32);
    }
}
