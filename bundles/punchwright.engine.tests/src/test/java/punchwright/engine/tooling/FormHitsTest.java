// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.geometry.Point;
import punchwright.engine.press.FormClearance;
import punchwright.engine.press.Machine;

/** How many hits a form gets, where, and what a machine's clear room refuses. Common practice, no source. */
class FormHitsTest {

    private static Tool form(ToolShape shape, double l, double w, double height, ToolRoom room) {
        Tool t = Shop.tool("F", shape, l, w, 0);
        return new Tool("F", "F", shape, l, w, 0, AngleFreedom.ANY, 0, List.of(), ShearKind.FLAT, 0, 200, 10, 6, Map.of(), 0, 1,
                height, List.of(), null, room);
    }

    private static ToolingJob job(String kind, double d, double t, Machine machine, Tool tool) {
        List<Tool> tools = new ArrayList<>(Shop.tools());
        tools.add(tool);
        ToolingJob job = Shop.job(Parts.plate(200, 100).form(kind, 100, 50, d).build("A"), t, tools);
        return new ToolingJob(job.features(), job.material(), t, machine == null ? job.machine() : machine, tools, List.of(),
                job.rules());
    }

    private static Operation formed(ToolingJob job) {
        return ToolChoice.choose(job).operations().stream().filter(o -> o.kind() == OperationKind.FORMING).findFirst()
                .orElseThrow();
    }

    /** 6 mm in 1 mm sheet: 3 mm a hit make two; the record's own number goes before the rule. */
    @Test
    void aHighLouvreGetsItsHitsInOnePlace() {
        Operation two = formed(job("LOUVRE", 20, 1, null, form(ToolShape.LOUVRE, 20, 20, 6, ToolRoom.NONE)));
        assertEquals(2, two.hits().size());
        assertEquals(two.hits().get(0), two.hits().get(1));
        assertTrue(two.why().endsWith("2 hits"), two.why());
        assertEquals(1, formed(job("LOUVRE", 20, 2, null, form(ToolShape.LOUVRE, 20, 20, 6, ToolRoom.NONE))).hits().size());
        assertEquals(3, formed(job("EMBOSS", 20, 2, null, form(ToolShape.EMBOSS, 20, 20, 2, new ToolRoom(0, 0, 0, 3)))).hits()
                .size());
    }

    /** Bead of 100 with a roller of 20: steps of 5 at most from 10 to 90 are 17 hits; of 20 one hit. */
    @Test
    void aLongBeadIsMadeStepByStep() {
        Tool roller = form(ToolShape.ROLLER, 20, 6, 3, ToolRoom.NONE);
        Feature bead = new Feature(1, FeatureKind.FORM, new Point(100, 50), 90, 100, 6, 0, null, List.of(), "ROLLER");
        assertTrue(FormHits.fits(bead, roller, 0.05));
        List<PartHit> hits = FormHits.of(bead, roller, 90, 1);
        assertEquals(17, hits.size());
        assertEquals(10, hits.getFirst().at().y(), 1e-9);
        assertEquals(90, hits.getLast().at().y(), 1e-9);
        assertTrue(hits.stream().allMatch(h -> Math.abs(h.at().x() - 100) < 1e-9));
        Feature shorter = new Feature(1, FeatureKind.FORM, new Point(100, 50), 90, 15, 6, 0, null, List.of(), "ROLLER");
        assertTrue(!FormHits.fits(shorter, roller, 0.05));
        Feature same = new Feature(1, FeatureKind.FORM, new Point(100, 50), 90, 20, 6, 0, null, List.of(), "ROLLER");
        assertEquals(1, FormHits.of(same, roller, 90, 1).size());
    }

    /** A form of 6 mm on a machine that lets 5 mm pass is refused with both figures; one with 6 mm takes it. */
    @Test
    void aFormThatDoesNotPassIsRefused() {
        Tool tool = form(ToolShape.LOUVRE, 20, 20, 6, ToolRoom.NONE);
        ToolingJob low = job("LOUVRE", 20, 2, press(5, 0), tool);
        var refusal = ToolChoice.choose(low).findings().stream().filter(f -> f.reason() == ToolingReason.FORM_STANDS).findFirst()
                .orElseThrow();
        assertTrue(refusal.isError() && refusal.message().contains("6 mm") && refusal.message().contains("5 mm"),
                refusal.message());
        assertEquals(1, formed(job("LOUVRE", 20, 2, press(6, 0), tool)).hits().size());
        Tool down = form(ToolShape.LOUVRE, 20, 20, -6, ToolRoom.NONE);
        assertTrue(ToolChoice.choose(job("LOUVRE", 20, 2, press(9, 4), down)).findings().stream()
                .anyMatch(f -> f.reason() == ToolingReason.FORM_STANDS && f.message().contains("down")));
    }

    private static Machine press(double up, double down) {
        Machine m = Shop.press();
        return new Machine(m.id(), m.name(), m.throatDepthMm(), m.travelXMm(), m.travelYMm(), m.xAxis(), m.yAxis(),
                m.longestSheetMm(), m.minThicknessMm(), m.maxThicknessMm(), m.maxSheetMassKg(), m.pressForceN(), m.headKind(),
                m.places(), m.clamps(), m.times(), m.dropOpeningMm(), m.accuracyMm(), m.options(), new FormClearance(up, down, 0));
    }
}
