// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import punchwright.engine.finding.Finding;
import punchwright.engine.press.ClearanceRule;
import punchwright.engine.press.MachineOptions;
import punchwright.engine.press.Material;
import punchwright.engine.press.MaterialGroup;
import punchwright.engine.press.PressReason;

/** The rules of the press reach the operations of a part: each rule broken once gives its finding, kept it gives none. */
class TradeRulesTest {

    private static Tool form(ToolShape shape, double d, double height) {
        Tool t = Shop.tool("F" + d, shape, d, d, 0);
        return new Tool(t.id(), t.name(), shape, d, d, 0, t.freedom(), 0, List.of(), ShearKind.FLAT, 0, 200, 10, 6, Map.of(), 0,
                1,
                height, List.of(), null);
    }

    /** A tool whose record says that one hit makes the form. */
    private static Tool once(Tool t) {
        return new Tool(t.id(), t.name(), t.shape(), t.lengthMm(), t.widthMm(), 0, t.freedom(), 0, List.of(), ShearKind.FLAT, 0,
                200, 10, 6, Map.of(), 0, 1, t.formHeightMm(), List.of(), null, new ToolRoom(0, 0, 0, 1));
    }

    private static List<Finding> of(PressReason reason, Parts part, double t, Material material, Tool... more) {
        List<Tool> tools = new ArrayList<>(Shop.tools());
        tools.addAll(List.of(more));
        ToolingJob job = Shop.job(part.build("A"), t, tools);
        job = new ToolingJob(job.features(), material, t, job.machine(), tools, List.of(), job.rules());
        return ToolChoice.choose(job).findings().stream().filter(f -> f.reason() == reason).toList();
    }

    private static Material material(MaterialGroup group, double percent) {
        return new Material("M", "X", group, 8, 200, 300, 240, ClearanceRule.PERCENT, percent, 1, 0.8);
    }

    @Test
    void openingsTooNearToAForm() {
        Parts near = Parts.plate(200, 100).round(100, 50, 10).form("EMBOSS", 116, 50, 20);
        List<Finding> found = of(PressReason.FORM_NEAR, near, 1, Shop.STEEL, form(ToolShape.EMBOSS, 20, 2));
        assertEquals(1, found.size());
        assertTrue(found.getFirst().message().startsWith("1 mm from an edge to a form is less than 3 mm"),
                found.getFirst().message());
        Parts far = Parts.plate(200, 100).round(100, 50, 10).form("EMBOSS", 119, 50, 20);
        assertTrue(of(PressReason.FORM_NEAR, far, 1, Shop.STEEL, form(ToolShape.EMBOSS, 20, 2)).isEmpty());
    }

    @Test
    void louvresTooHigh() {
        Parts part = Parts.plate(200, 100).form("LOUVRE", 100, 50, 20);
        assertEquals(1, of(PressReason.FORM_HITS, part, 1, Shop.STEEL, form(ToolShape.LOUVRE, 20, 3.5)).size());
        assertTrue(of(PressReason.FORM_HIGH, part, 1, Shop.STEEL, form(ToolShape.LOUVRE, 20, 3.5)).isEmpty());
        assertEquals(1, of(PressReason.FORM_HIGH, part, 1, Shop.STEEL, once(form(ToolShape.LOUVRE, 20, 3.5))).size());
        assertTrue(of(PressReason.FORM_HIGH, part, 1, Shop.STEEL, form(ToolShape.LOUVRE, 20, -3)).isEmpty());
    }

    /** Lange (from memory) by hand: outer 9, t 1, mean 8, H 2: d0 = 8 - 2 (2 - 0.215 - 0.72) = 5.87. */
    @Test
    void holeUnderACollar() {
        Tool collar = form(ToolShape.COLLAR, 9, 1);
        Parts wrong = Parts.plate(200, 100).round(100, 50, 5).form("COLLAR", 100, 50, 9);
        List<Finding> found = of(PressReason.COLLAR_HOLE, wrong, 1, Shop.STEEL, collar);
        assertEquals(1, found.size());
        assertTrue(found.getFirst().message().contains("5.87"), found.getFirst().message());
        Parts right = Parts.plate(200, 100).round(100, 50, 6).form("COLLAR", 100, 50, 9);
        assertTrue(of(PressReason.COLLAR_HOLE, right, 1, Shop.STEEL, collar, Shop.round(6)).isEmpty());
        Parts solid = Parts.plate(200, 100).form("COLLAR", 100, 50, 9);
        assertEquals(1, of(PressReason.COLLAR_SOLID, solid, 1, Shop.STEEL, collar).size());
        assertTrue(of(PressReason.COLLAR_SOLID, right, 1, Shop.STEEL, collar, Shop.round(6)).isEmpty());
        Parts tight = Parts.plate(200, 100).round(100, 50, 3).form("COLLAR", 100, 50, 9);
        assertEquals(1, of(PressReason.STRETCH, tight, 1, Shop.STEEL, collar).size());
    }

    @Test
    void countersinkWithoutALand() {
        Parts part = Parts.plate(200, 100).round(100, 50, 5).form("COUNTERSINK", 100, 50, 10);
        assertEquals(1, of(PressReason.COUNTERSINK_DEEP, part, 2, Shop.STEEL, form(ToolShape.COUNTERSINK, 10, 0)).size());
        assertTrue(of(PressReason.COUNTERSINK_DEEP, part, 3, Shop.STEEL, form(ToolShape.COUNTERSINK, 10, 0)).isEmpty());
    }

    @Test
    void holesInCopperBar() {
        Parts part = Parts.plate(200, 100).round(100, 50, 5);
        assertEquals(1, of(PressReason.COPPER_BAR, part, 6, material(MaterialGroup.COPPER, 15)).size());
        assertTrue(of(PressReason.COPPER_BAR, part, 5, material(MaterialGroup.COPPER, 15)).isEmpty());
        assertTrue(of(PressReason.COPPER_BAR, part, 6, material(MaterialGroup.BRASS, 15)).isEmpty());
    }

    /** Soft and thin: two causes; steel of 2 mm with holes of 8 mm: none. */
    @Test
    void slugsThatMayComeUp() {
        Parts part = Parts.plate(200, 100).round(100, 50, 8);
        List<Finding> found = of(PressReason.SLUG_PULLING, part, 0.8, material(MaterialGroup.ALUMINIUM, 25));
        assertFalse(found.isEmpty());
        assertEquals(found.size(), found.stream().map(Finding::subject).distinct().count(), "each tool once");
        assertTrue(of(PressReason.SLUG_PULLING, part, 2, Shop.STEEL).isEmpty());
        assertTrue(new MachineOptions(true, false).oilWithoutSuction() && !new MachineOptions(true, true).oilWithoutSuction());
    }

    @Test
    void sheetOutsideTheRangeOfTheForceFormula() {
        assertTrue(of(PressReason.RANGE, Parts.plate(200, 100).round(100, 50, 10), 8, Shop.STEEL).isEmpty());
        ToolingJob job = Shop.job(Parts.plate(200, 100).round(100, 50, 10).build("A"), 0.3, Shop.tools());
        assertFalse(new TradeRules(job).findings(List.of()).isEmpty());
    }
}
