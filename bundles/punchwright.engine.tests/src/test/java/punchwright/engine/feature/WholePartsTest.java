// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import org.junit.jupiter.api.Test;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.geometry.Shape;
import punchwright.synthetic.Miss;
import punchwright.synthetic.PartComparison;
import punchwright.synthetic.PartComparison.Tally;
import punchwright.synthetic.SyntheticPart;
import punchwright.synthetic.SyntheticParts;

/** Validation: whole parts from DXF text, whose features are known because they were drawn from them. */
class WholePartsTest {

    /** More with -Dpunchwright.parts=10000; the benchmark "features" prints figures. */
    private static final int COUNT = Integer.getInteger("punchwright.parts", 80);
    private static final long SEED = 20260301;

    @Test
    void everyFeatureIsFoundWithItsSizes() throws DrawingException {
        Map<String, Tally> tallies = new TreeMap<>();
        List<String> missed = new ArrayList<>();
        for (long n = 0; n < COUNT; n++) {
            SyntheticPart part = SyntheticParts.part(SEED, n);
            List<Shape> shapes = read(part);
            assertEquals(1, shapes.size(), "part " + n);
            PartComparison.compare(part, FeatureRecognition.recognise("part", shapes.get(0)), tallies).stream().map(Miss::text)
                    .forEach(missed::add);
        }
        assertEquals(List.of(), missed.stream().limit(10).toList(), missed.size() + " missed");
        assertTrue(tallies.keySet()
                .containsAll(Set.of("ROUND", "SQUARE", "RECTANGLE", "ROUNDED_RECTANGLE", "OBROUND", "SINGLE_FLAT",
                "DOUBLE_FLAT", "HEXAGON", "TRIANGLE", "KEYHOLE", "ARC_SLOT", "FREE_OPENING", "CORNER_NOTCH", "EDGE_NOTCH",
                "CORNER_RADIUS",
                "CHAMFER", "OUTER EDGES", "ROW", "GRID", "STAGGERED_GRID", "BOLT_CIRCLE")), tallies.keySet().toString());
    }

    /** The comparison must be able to fail: another part's features are not these. */
    @Test
    void theFeaturesOfAnotherPartAreMissed() throws DrawingException {
        FeatureSet other = FeatureRecognition.recognise("part", read(SyntheticParts.part(SEED, 1)).get(0));
        SyntheticPart part = SyntheticParts.part(SEED, 0);
        int drawn = part.openings().size() + part.details().size() + part.patterns().size();
        assertTrue(PartComparison.compare(part, other, new TreeMap<>()).size() >= drawn);
    }

    private static List<Shape> read(SyntheticPart part) throws DrawingException {
        return DrawingReader.read(new ByteArrayInputStream(part.dxf().getBytes(StandardCharsets.US_ASCII)), "part",
                DrawingOptions.USUAL).shapes();
    }
}
