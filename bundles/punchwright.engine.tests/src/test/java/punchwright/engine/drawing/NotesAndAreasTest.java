// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Segment;

/** Validation: texts, points and filled areas as the DXF Reference ("TEXT", "MTEXT", "POINT", "SOLID") places and orders them. */
class NotesAndAreasTest {

    private static final String SQUARE = "0 SOLID|10 10|20 10|11 40|21 10|12 10|22 30|13 40|23 30";

    private static DrawingResult read(String tags) throws DrawingException {
        return read(tags, DrawingOptions.USUAL);
    }

    private static DrawingResult read(String tags, DrawingOptions options) throws DrawingException {
        return Dxf.read(Dxf.header("9 $INSUNITS|70 1") + Dxf.entities(Dxf.PLATE + Dxf.tags(tags)), options);
    }

    @Test
    void aTextHasPlaceHeightAngleAndLayer() throws DrawingException {
        DrawnText t = read("0 TEXT|8 Engraving|10 2|20 3|40 0.5|50 30|1 A %%c6 %%p0.1 45%%d").texts().get(0);
        assertEquals("A \u00D86 \u00B10.1 45\u00B0", t.text());
        assertEquals(2 * 25.4, t.place().x(), 1e-9);
        assertEquals(3 * 25.4, t.place().y(), 1e-9);
        assertEquals(0.5 * 25.4, t.heightMm(), 1e-9);
        assertEquals(30, t.angleDeg(), 1e-9);
        assertEquals("Engraving", t.layer());
        assertEquals(LayerMeaning.MARK, t.meaning());
    }

    @Test
    void aLongTextIsJoinedAndFreedOfItsCodes() throws DrawingException {
        DrawnText t = read("0 MTEXT|10 1|20 1|40 2|11 0|21 3|3 {\\fArial;Serial \\C1;no.^I|1 17}"
                + "\\P\\LRev\\l B \\S1/2; \\\\ \\{x\\}").texts().get(0);
        assertEquals(90, t.angleDeg(), 1e-9);
        assertEquals(List.of("Serial no. 17", "Rev B 1/2 \\ {x}"), t.lines());
        DrawnText plain = read("0 MTEXT|10 1|20 1|40 2|3 {\\H2.5x;Serial \\C1;no.\\~|1 17}\\PRev").texts().get(0);
        assertEquals(List.of("Serial no. 17", "Rev"), plain.lines()); // "\\~" is a fixed blank
    }

    @Test
    void textsInAMirroredBlockTurnWithIt() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.mm()
                + Dxf.blocks(Dxf.block("B", Dxf.tags("0 TEXT|10 5|20 0|40 2|50 0|1 X|0 POINT|10 1|20 2")))
                + Dxf.entities(Dxf.PLATE + Dxf.tags("0 INSERT|2 B|10 100|20 50|41 3|42 -3|50 90")));
        DrawnText t = r.texts().get(0);
        assertEquals(90, t.angleDeg(), 1e-9);
        assertEquals(6, t.heightMm(), 1e-9);
        assertEquals(100, t.place().x(), 1e-9);
        assertEquals(65, t.place().y(), 1e-9);
        assertEquals(106, r.centreMarks().get(0).place().x(), 1e-9);
        assertEquals(53, r.centreMarks().get(0).place().y(), 1e-9);
    }

    @Test
    void filledAreasAreLeftOutAndCounted() throws DrawingException {
        DrawingResult r = read(SQUARE);
        assertEquals(1, r.loops().size());
        assertTrue(r.findings().stream().anyMatch(f -> f.reason() == DrawingReason.FILLED_AREAS && f.arguments().get(0)
                .equals(1)));
        UncutLine area = r.uncutLines().get(0);
        assertTrue(area.filled() && !area.isHidden() && area.meaning() == LayerMeaning.CUT);
        assertEquals(4, area.segments().size());
        assertEquals(100 * 25.4, area.segments().stream().mapToDouble(Segment::lengthMm).sum(), 1e-6);
    }

    @Test
    void filledAreasBecomeContoursWhenAskedFor() throws DrawingException {
        DrawingResult r = read(SQUARE + "|0 TRACE|10 -80|20 50|11 -90|21 50|12 -80|22 60|13 -80|23 60|230 -1",
                DrawingOptions.USUAL.withFilledAreasCut(true).withUnit(1));
        assertEquals(3, r.loops().size());
        assertEquals(List.of(), r.uncutLines());
        assertEquals(20000 - 600 - 50, r.areaMm2(),
                1e-9); // fourth corner equal to the third: a triangle; extrusion down mirrors x
        Bounds triangle = r.shapes().get(0).holes().stream().map(h -> h.bounds()).filter(b -> b.minX() > 79).findAny()
        .orElseThrow();
        assertEquals(90, triangle.maxX(), 1e-9);
    }

    @Test
    void linesThatAreNotCutTellWhy() throws DrawingException {
        String layers = Dxf.tags("0 SECTION|2 TABLES|0 TABLE|2 LAYER|0 LAYER|2 ICE|70 1|62 7"
                + "|0 LAYER|2 DARK|70 0|62 -3|0 ENDTAB|0 ENDSEC");
        DrawingResult r = Dxf.read(Dxf.mm() + layers + Dxf.entities(Dxf.PLATE + Dxf.tags("0 CIRCLE|8 ICE|10 50|20 50|40 5"
                + "|0 CIRCLE|8 DARK|10 90|20 50|40 5|0 CIRCLE|8 BEND|10 90|20 50|40 5|0 CIRCLE|8 CENTER|10 90|20 50|40 5"
                + "|0 CIRCLE|60 1|10 90|20 50|40 5")));
        assertEquals(List.of("CUT FROZEN", "CUT OFF", "BEND_LINE SHOWN", "IGNORE SHOWN", "CUT INVISIBLE"),
                r.uncutLines().stream().map(u -> u.meaning() + " " + u.state()).toList());
        LayerUse ice = r.layers().stream().filter(l -> l.layer().equals("ICE")).findAny().orElseThrow();
        assertEquals(LayerState.FROZEN, ice.state());
        assertEquals(1, ice.curves());
        assertEquals(10 * Math.PI, ice.lengthMm(), 1e-9);
        assertEquals(600 + 10 * Math.PI, r.layers().stream().filter(l -> l.layer().equals("0")).mapToDouble(LayerUse::lengthMm)
                .sum(), 1e-9);
    }

    @Test
    void theUnitSaysWhereItComesFrom() throws DrawingException {
        UnitChoice guessed = Dxf.read(Dxf.entities(Dxf.PLATE)).unit();
        assertEquals(UnitChoice.Source.GUESSED, guessed.source());
        assertEquals(UnitChoice.Ground.USUAL_SIZE_IN_MM, guessed.ground());
        assertTrue(guessed.isDoubtful() && guessed.finding().message().contains("this is a usual size in mm"));
        assertEquals(200 * 25.4, guessed.widthMm(25.4), 1e-9);
        assertEquals(100, guessed.heightUnits(), 1e-9);
        UnitChoice stated = Dxf.read(Dxf.mm() + Dxf.entities(Dxf.PLATE)).unit();
        assertEquals(UnitChoice.Source.STATED, stated.source());
        assertTrue(!stated.isDoubtful() && stated.findingIfAny().isEmpty());
        UnitChoice inch = Dxf.read(Dxf.header("9 $MEASUREMENT|70 0") + Dxf.entities(Dxf.circle(0, 0, 3))).unit();
        assertEquals(UnitChoice.Ground.MARKED_INCH, inch.ground());
        assertEquals(25.4, inch.mmPerUnit());
        assertTrue(inch.finding().message().contains("inch based"));
    }
}
