// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import punchwright.engine.drawing.DrawingOptions;
import punchwright.model.shop.Material;
import punchwright.model.shop.ShopFactory;

/** Drawings as the intake sees them; counts and sizes by hand. */
class DrawingReadingTest {

    @TempDir
    Path folder;

    private DrawingReading read(String text) throws IOException {
        return DrawingReading.of(Files.writeString(folder.resolve("d.dxf"), text), DrawingOptions.USUAL);
    }

    @Test
    void equalPartsAreCountedTogetherAlsoMirrored() throws IOException {
        String l = Drawn.polyline(true, 0, 0, 60, 0, 60, 20, 30, 20, 30, 50, 0, 50);
        String mirrored = Drawn.polyline(true, 100, 0, 160, 0, 160, 50, 130, 50, 130, 20, 100, 20);
        DrawingReading reading = read(Drawn.mm(l, mirrored, Drawn.plate(200, 0, 30, 10), Drawn.plate(300, 0, 10, 30)));
        assertFalse(reading.isRefused());
        assertEquals(2, reading.parts().size());
        FoundPart first = reading.parts().get(0).openings() == 0 && reading.parts().get(0).areaMm2() > 1000 ? reading.parts()
                .get(0)
                : reading.parts().get(1);
        assertEquals(2, first.count());
        assertEquals(1, first.mirrored());
        assertEquals(60 * 20 + 30 * 30, first.areaMm2(), 1e-9);
        FoundPart strip = reading.parts().get(0) == first ? reading.parts().get(1) : reading.parts().get(0);
        assertEquals(2, strip.count());
        assertEquals(0, strip.mirrored());
    }

    @Test
    void anOpenOutlineIsRefusedWithItsPlaceAndStillShown() throws IOException {
        DrawingReading reading = read(Drawn.mm(Drawn.polyline(false, 0, 0, 100, 0, 100, 50, 0, 50)));
        assertTrue(reading.isRefused());
        assertEquals(reading.refusal(), reading.findings().get(0));
        assertNotNull(reading.drawing());
        assertEquals(1, reading.drawing().openChains().size());
    }

    @Test
    void aFileThatIsNoDrawingIsRefusedWithAReason() throws IOException {
        DrawingReading reading = read("This is a letter, not a drawing.\n");
        assertTrue(reading.isRefused());
        assertNull(reading.drawing());
        assertFalse(reading.refusal().message().isBlank());
        assertTrue(DrawingReading.of(folder.resolve("missing.dxf"), DrawingOptions.USUAL).isRefused());
    }

    @Test
    void drawingsBelowFoldersAreFoundOnceAndInOrder() throws IOException {
        Files.createDirectories(folder.resolve("b/c"));
        for (String name : List.of("b/c/2.DXF", "b/1.dxf", "a.txt", "b/note.pdf")) {
            Files.writeString(folder.resolve(name), "x");
        }
        List<Path> found = DrawingFiles.below(List.of(folder.resolve("b/1.dxf"), folder, folder.resolve("a.txt")), () -> false);
        assertEquals(List.of("1.dxf", "2.DXF", "a.txt"), found.stream().map(f -> f.getFileName().toString()).toList());
        assertEquals(List.of(), DrawingFiles.below(List.of(folder), () -> true));
    }

    @ParameterizedTest
    @CsvSource({"t=2,2", "t = 1.5 mm,1.5", "'s=0,75',0.75", "THK 3,3", "Dicke: 2.5mm,2.5", "Plate 4 mm thick,4", "DC01 t2,2",
        "'Blechst\u00e4rke 1,0',1"})
    void thicknessIsFoundInNotes(String note, double mm) {
        assertEquals(OptionalDouble.of(mm), NoteReading.thicknessMm(List.of("Cover", note)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"R2", "Part 12", "2 x 45\u00b0", "t=2 x 30", "t=0", "M6", "100 mm", "Bolt2", "t=400"})
    void otherFiguresAreNoThickness(String note) {
        assertEquals(OptionalDouble.empty(), NoteReading.thicknessMm(List.of(note)));
    }

    @Test
    void notesThatDisagreeSayNothing() {
        assertEquals(OptionalDouble.empty(), NoteReading.thicknessMm(List.of("t=2", "t=3")));
        assertEquals(OptionalDouble.of(2), NoteReading.thicknessMm(List.of("t=2", "s = 2.0")));
    }

    @ParameterizedTest
    @CsvSource({"Qty 12,12", "12 off,12", "Stk: 4,4", "'Anzahl = 250',250", "6 pcs,6"})
    void quantityIsFoundInNotes(String note, int quantity) {
        assertEquals(OptionalInt.of(quantity), NoteReading.quantity(List.of(note)));
    }

    @Test
    void materialIsFoundByGradeAsAWord() {
        Material dc01 = material("Cold rolled DC01", "DC01");
        Material dx51 = material("DX51D+Z", "DX51D");
        List<Material> all = List.of(dc01, dx51);
        assertEquals(Optional.of(dc01), NoteReading.material(List.of("Mat.: dc 01, t=2"), all));
        assertEquals(Optional.of(dx51), NoteReading.material(List.of("DX51D-Z275"), all));
        assertEquals(Optional.empty(), NoteReading.material(List.of("DC011"), all));
        assertEquals(Optional.empty(), NoteReading.material(List.of("DC01 or DX51D"), all));
    }

    private static Material material(String name, String grade) {
        Material material = ShopFactory.eINSTANCE.createMaterial();
        material.setName(name);
        material.setGrade(grade);
        return material;
    }
}
