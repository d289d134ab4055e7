// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.Severity;

class LayersAndUnitsTest {

    private static String layers(String pairs) {
        return Dxf.tags("0 SECTION|2 TABLES|0 TABLE|2 LAYER|" + pairs + "|0 ENDTAB|0 ENDSEC");
    }

    private static boolean has(DrawingResult r, DrawingReason reason) {
        return r.findings().stream().anyMatch(f -> f.reason() == reason);
    }

    @Test
    void frozenAndSwitchedOffLayersAreLeftOutAndNamed() throws DrawingException {
        String file = Dxf.mm() + layers("0 LAYER|2 ICE|70 1|62 7|0 LAYER|2 DARK|70 0|62 -3")
                + Dxf.entities(Dxf.PLATE + Dxf.tags("0 CIRCLE|8 ICE|10 50|20 50|40 5|0 CIRCLE|8 dark|10 90|20 50|40 5"));
        DrawingResult r = Dxf.read(file);
        assertEquals(1, r.loops().size());
        assertTrue(r.findings().stream().anyMatch(f -> f.reason() == DrawingReason.HIDDEN_LAYERS && f.message()
                .contains("ICE (1)")));
        assertEquals(3, Dxf.read(file, DrawingOptions.EVERYTHING).loops().size());
    }

    /** A countersink drawn as two circles makes a disc by nesting; the reader says so. A spacer in a wide hole is a part. */
    @Test
    void aDiscInAHoleOfTheSameCentreIsNamed() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.mm() + Dxf.entities(Dxf.PLATE + Dxf.circle(50, 50, 5.2) + Dxf.circle(50, 50, 4.6)
                + Dxf.circle(140, 50, 30) + Dxf.circle(140, 50, 5) + Dxf.circle(120, 50, 4)));
        assertEquals(4, r.shapes().size());
        List<Finding> named = r.findings().stream().filter(f -> f.reason() == DrawingReason.DISC_IN_HOLE).toList();
        assertEquals(1, named.size());
        assertTrue(named.getFirst().message().contains("9.2 mm at (50, 50)") && named.getFirst().message().contains("10.4 mm"));
    }

    @Test
    void theFirstRuleThatFitsDecides() {
        LayerRules rules = new LayerRules(List.of(LayerRule.forLayer("cut-?", LayerMeaning.CUT),
                LayerRule.forColour(1, LayerMeaning.MARK),
                LayerRule.forLineType("*DOT*", LayerMeaning.BEND_LINE)), LayerMeaning.IGNORE);
        assertEquals(LayerMeaning.CUT, rules.meaning("CUT-1", "DASHDOT", 1));
        assertEquals(LayerMeaning.MARK, rules.meaning("CUT-12", "DASHDOT", 1));
        assertEquals(LayerMeaning.BEND_LINE, rules.meaning("X", "DashDot", 2));
        assertEquals(LayerMeaning.IGNORE, rules.meaning("X", "CONTINUOUS", 2));
    }

    @Test
    void usualNamesTellTheirMeaning() {
        LayerRules r = LayerRules.USUAL;
        assertEquals(LayerMeaning.BEND_LINE, r.meaning("Bend lines", "CONTINUOUS", 7));
        assertEquals(LayerMeaning.BEND_LINE, r.meaning("BIEGELINIEN", "CONTINUOUS", 7));
        assertEquals(LayerMeaning.MARK, r.meaning("engraving", "CONTINUOUS", 7));
        assertEquals(LayerMeaning.FORM_UP, r.meaning("FORM_UP", "CONTINUOUS", 7));
        assertEquals(LayerMeaning.IGNORE, r.meaning("0", "CENTER2", 7));
        for (String name : List.of("0", "CUT", "OUTLINE", "Edge.Cuts", "Kontur", "Platform")) {
            assertEquals(LayerMeaning.CUT, r.meaning(name, "CONTINUOUS", 7), name);
        }
    }

    @Test
    void colourByLayerIsTheColourOfTheLayer() throws DrawingException {
        LayerRules rules = new LayerRules(List.of(LayerRule.forColour(5, LayerMeaning.MARK)), LayerMeaning.CUT);
        DrawingResult r = Dxf.read(Dxf.mm() + layers("0 LAYER|2 A|70 0|62 5") + Dxf.entities(Dxf.PLATE
                + Dxf.tags("0 CIRCLE|8 A|10 50|20 50|40 5|0 CIRCLE|8 A|62 2|10 90|20 50|40 5")),
                DrawingOptions.USUAL.withLayerRules(rules));
        assertEquals(2, r.loops().size());
        assertEquals(LayerMeaning.MARK, r.uncutLines().get(0).meaning());
    }

    @Test
    void everyLookOfEveryLayerIsCountedWithItsMeaning() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.mm() + layers("0 LAYER|2 A|70 0|62 5|0 LAYER|2 ICE|70 1|62 7") + Dxf.entities(Dxf.PLATE
                + Dxf.tags("0 CIRCLE|8 A|10 50|20 50|40 5|0 CIRCLE|8 A|62 2|10 90|20 50|40 5|0 CIRCLE|8 A|10 70|20 50|40 5"
                        + "|0 CIRCLE|8 ICE|10 20|20 20|40 5|0 CIRCLE|8 BEND|10 30|20 20|40 1")));
        double round = 10 * Math.PI; // radius 5
        List<LayerUse> layerA = r.layers().stream().filter(l -> l.layer().equals("A")).toList();
        assertEquals(List.of(new LayerUse("A", 2, "CONTINUOUS", LayerState.SHOWN, 1, LayerMeaning.CUT, round, 0),
                new LayerUse("A", 5, "CONTINUOUS", LayerState.SHOWN, 2, LayerMeaning.CUT, 2 * round, 0)), layerA);
        assertTrue(r.layers().contains(new LayerUse("ICE", 7, "CONTINUOUS", LayerState.FROZEN, 1, LayerMeaning.CUT, round, 0)),
                () -> r.layers().toString());
        assertEquals(LayerMeaning.BEND_LINE, r.layers().stream().filter(l -> l.layer().equals("BEND")).findFirst().orElseThrow()
                .meaning());
    }

    @Test
    void nothingToCutBecauseOfTheRulesIsSaid() {
        DrawingException e = assertThrows(DrawingException.class,
                () -> Dxf.read(Dxf.mm() + Dxf.entities(Dxf.tags("0 CIRCLE|8 CENTERLINES|10 50|20 50|40 5"))));
        assertEquals(DrawingReason.NO_CONTOUR_CUT, e.finding().reason());
        assertTrue(e.getMessage().contains("CENTERLINES"));
    }

    @Test
    void inchesAreConverted() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.header("9 $INSUNITS|70 1") + Dxf.entities(Dxf.circle(0, 0, 0.5)));
        assertEquals(25.4, r.circleDiametersMm().get(0), 1e-9);
        assertFalse(has(r, DrawingReason.UNIT_DOUBTFUL));
    }

    @Test
    void inchAndMetricTogetherAreDoubtful() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.header("9 $INSUNITS|70 1|9 $MEASUREMENT|70 1") + Dxf.entities(Dxf.PLATE));
        assertTrue(has(r, DrawingReason.UNIT_DOUBTFUL));
        assertEquals(25.4, r.mmPerUnit());
    }

    @Test
    void withoutAUnitTheSizeDecidesWithAWarning() throws DrawingException {
        DrawingResult large = Dxf.read(Dxf.entities(Dxf.PLATE));
        assertEquals(1, large.mmPerUnit());
        assertTrue(large.findings().stream().anyMatch(f -> f.reason() == DrawingReason.UNIT_NOT_STATED
                && f.severity() == Severity.WARNING));
        DrawingResult small = Dxf.read(Dxf.entities(Dxf.circle(0, 0, 1)));
        assertEquals(25.4, small.mmPerUnit());
    }

    @Test
    void metricMarkMeansMillimetres() throws DrawingException {
        DrawingResult r = Dxf.read(Dxf.header("9 $MEASUREMENT|70 1") + Dxf.entities(Dxf.circle(0, 0, 1)));
        assertEquals(1, r.mmPerUnit());
        assertTrue(has(r, DrawingReason.UNIT_FROM_MEASUREMENT));
    }

    @Test
    void theUnitAskedForWins() throws DrawingException {
        assertEquals(10, Dxf.read(Dxf.mm() + Dxf.entities(Dxf.PLATE), DrawingOptions.USUAL.withUnit(10)).mmPerUnit());
        assertThrows(IllegalArgumentException.class, () -> DrawingOptions.USUAL.withUnit(0));
        assertThrows(IllegalArgumentException.class, () -> DrawingOptions.USUAL.withTolerance(Double.NaN));
    }
}
