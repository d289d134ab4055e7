// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.drawing.dxf.DxfReason;
import punchwright.engine.geometry.Bounds;

class BlockReadingTest {

    private static DrawingResult read(String blocks, String inserts) throws DrawingException {
        return Dxf.read(Dxf.mm() + Dxf.blocks(blocks) + Dxf.entities(Dxf.PLATE + Dxf.tags(inserts)));
    }

    @Test
    void arrayOfRowsAndColumnsTurnsWithTheInsert() throws DrawingException {
        DrawingResult r = read(Dxf.block("H", Dxf.circle(0, 0, 2)), "0 INSERT|2 H|10 100|20 20|50 90|70 3|71 2|44 10|45 20");
        assertEquals(6, r.circleDiametersMm().size());
        Bounds all = r.shapes().get(0).holes().stream().map(h -> h.bounds()).reduce(Bounds.EMPTY, Bounds::including);
        assertEquals(100 - 20 - 2, all.minX(), 1e-9); // rows run along -x after a turn of 90 degrees
        assertEquals(102, all.maxX(), 1e-9);
        assertEquals(42, all.maxY(), 1e-9);
    }

    @Test
    void nestedScaledAndMirrored() throws DrawingException {
        DrawingResult r = read(Dxf.block("IN", Dxf.circle(1, 0, 0.5))
                + Dxf.block("OUT", Dxf.tags("0 INSERT|2 IN|10 2|20 0|41 2|42 2")), "0 INSERT|2 OUT|10 100|20 50|41 -3|42 3");
        Bounds hole = r.shapes().get(0).holes().get(0).bounds();
        assertEquals(100 - 3 * (2 + 2), hole.center().x(), 1e-9);
        assertEquals(6, r.circleDiametersMm().get(0), 1e-9);
    }

    @Test
    void unequalScaleMakesAnEllipse() throws DrawingException {
        DrawingResult r = read(Dxf.block("H", Dxf.circle(0, 0, 5)), "0 INSERT|2 H|10 100|20 50|41 4|42 2");
        assertEquals(20000 - Math.PI * 20 * 10, r.areaMm2(), 0.01);
        assertEquals(List.of(), r.circleDiametersMm());
    }

    @Test
    void basePointIsTakenOff() throws DrawingException {
        String block = Dxf.tags("0 BLOCK|8 0|2 H|70 0|10 7|20 3") + Dxf.circle(7, 3, 4) + Dxf.tags("0 ENDBLK");
        DrawingResult r = read(block, "0 INSERT|2 H|10 60|20 40");
        assertEquals(60, r.shapes().get(0).holes().get(0).bounds().center().x(), 1e-9);
    }

    @Test
    void lineOnLayerZeroTakesTheLayerOfTheInsert() throws DrawingException {
        DrawingResult r = read(Dxf.block("B", Dxf.line(0, 0, 0, 50)), "0 INSERT|8 BEND|2 B|10 100|20 10");
        assertEquals(1, r.uncutLines().size());
        assertEquals(LayerMeaning.BEND_LINE, r.uncutLines().get(0).meaning());
        assertEquals(0, r.openChains().size());
    }

    @Test
    void cycleIsNamedAndTheRestIsRead() throws DrawingException {
        DrawingResult r = read(Dxf.block("A", Dxf.circle(0, 0, 2) + Dxf.tags("0 INSERT|2 B|10 0|20 0"))
                + Dxf.block("B", Dxf.tags("0 INSERT|2 A|10 5|20 5")), "0 INSERT|2 A|10 50|20 50");
        assertTrue(r.findings().stream().anyMatch(f -> f.reason() == DxfReason.BLOCK_CYCLE && f.message().contains("A > B")));
        assertEquals(1, r.circleDiametersMm().size());
    }

    @Test
    void aBombIsRefusedBeforeAnyWork() {
        StringBuilder blocks = new StringBuilder(Dxf.block("B0", Dxf.circle(0, 0, 1)));
        for (int i = 1; i <= 12; i++) {
            blocks.append(Dxf.block("B" + i, Dxf.tags("0 INSERT|2 B" + (i - 1) + "|70 100|71 100|44 1|45 1")));
        }
        DrawingException e = assertTimeoutPreemptively(Duration.ofSeconds(5),
                () -> assertThrows(DrawingException.class, () -> read(blocks.toString(), "0 INSERT|2 B12|10 0|20 0")));
        assertEquals(DxfReason.TOO_MANY_CURVES, e.finding().reason());
    }

    @Test
    void aChainOfAThousandBlocksEndsWithAFinding() throws DrawingException {
        StringBuilder blocks = new StringBuilder(Dxf.block("B0", Dxf.circle(0, 0, 1)));
        for (int i = 1; i <= 1000; i++) {
            blocks.append(Dxf.block("B" + i, Dxf.tags("0 INSERT|2 B" + (i - 1))));
        }
        DrawingResult r = read(blocks.toString(), "0 INSERT|2 B1000|10 20|20 20");
        assertTrue(r.findings().stream().anyMatch(f -> f.reason() == DxfReason.BLOCK_DEPTH));
    }

    @Test
    void arraysOfEmptyBlocksTakeNoTime() {
        String block = Dxf.block("E", "");
        assertTimeoutPreemptively(Duration.ofSeconds(2), () -> read(block, "0 INSERT|2 E|70 32000|71 32000"));
    }
}
