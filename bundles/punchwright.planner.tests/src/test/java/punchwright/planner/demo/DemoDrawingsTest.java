// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.geometry.Shape;

/** The committed drawings of the demo shop are what the program in this folder draws, and read back as drawn. */
class DemoDrawingsTest {

    private static final Path COMMITTED = DemoFolder.find().resolve("drawings");

    @Test
    void theCommittedDrawingsAreWhatTheProgramDraws(@TempDir Path folder) throws Exception {
        DemoDrawings.main(new String[] { folder.toString() });
        TreeSet<String> names = new TreeSet<>();
        try (Stream<Path> files = Files.list(COMMITTED)) {
            files.forEach(f -> names.add(f.getFileName().toString()));
        }
        assertEquals(DemoDrawings.all().size(), names.size());
        for (String name : names) {
            assertEquals(Files.readString(folder.resolve(name)), Files.readString(COMMITTED.resolve(name)), name);
        }
    }

    @Test
    void eachDrawingReadsBackWithTheSameAreaAndCutLength() throws Exception {
        for (Map.Entry<String, Shape> e : DemoDrawings.all().entrySet()) {
            DrawingResult read = DrawingReader.read(COMMITTED.resolve(e.getKey() + ".dxf"), DrawingOptions.USUAL);
            assertEquals(1, read.shapes().size(), e.getKey());
            assertEquals(e.getValue().areaMm2(), read.shapes().get(0).areaMm2(), 1e-3, e.getKey());
            assertEquals(e.getValue().cutLengthMm(), read.shapes().get(0).cutLengthMm(), 1e-4, e.getKey());
            assertTrue(read.openChains().isEmpty(), e.getKey());
        }
    }
}
