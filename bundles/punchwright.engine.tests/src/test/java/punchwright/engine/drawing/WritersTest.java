// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Openings;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

class WritersTest {

    private static final double E = 1e-6;

    private static Shape part(Random random) {
        double turn = random.nextDouble() * 360;
        List<Contour> holes = new ArrayList<>(List.of(Contour.circle(new Point(-60, 10), 12.345678901),
                Openings.keyhole(20, 4, 5).moved(Pose.at(0, 0, turn)), Openings.arcSlot(60, 6, 40).moved(Pose.at(60, -10, turn)),
                Openings.singleFlat(20, 17).moved(Pose.at(-30, -25, turn)), Openings.hexagon(13).moved(Pose.at(30, 25, turn))));
        return new Shape(Openings.rectangle(200, 100, 12), holes).moved(Pose.at(1000 * random.nextDouble(), -300, turn / 7));
    }

    @Test
    void aWrittenPartReadsBackTheSame() throws IOException, DrawingException {
        Random random = new Random(4);
        for (int i = 0; i < 30; i++) {
            Shape part = part(random);
            StringWriter out = new StringWriter();
            DxfWriter.write(List.of(part), out);
            DrawingResult r = Dxf.read(out.toString());
            assertEquals(List.of(), r.findings());
            assertEquals(1, r.mmPerUnit());
            Shape back = r.shapes().get(0);
            assertSame(part.outer(), back.outer());
            for (int h = 0; h < part.holes().size(); h++) {
                assertSame(part.holes().get(h), back.holes().get(h));
            }
        }
    }

    private static void assertSame(Contour a, Contour b) {
        assertEquals(a.segments().size(), b.segments().size());
        assertEquals(a.areaMm2(), b.areaMm2(), E);
        assertEquals(a.lengthMm(), b.lengthMm(), E);
        for (Segment s : a.segments()) {
            assertTrue(b.distance(s.start()) < E && b.distance(s.pointAt(0.37)) < E);
        }
    }

    @Test
    void layersKeepTheirContours() throws IOException, DrawingException {
        StringWriter out = new StringWriter();
        DxfWriter.writeLayers(Map.of("BEND", List.of(Contour.rectangle(10, 10, 5, 5))), out);
        DrawingException e = assertThrows(DrawingException.class, () -> Dxf.read(out.toString()));
        assertEquals(DrawingReason.NO_CONTOUR_CUT, e.finding().reason());
        assertThrows(IllegalArgumentException.class, () -> DxfWriter.writeLayers(Map.of("no blanks", List.of()), new StringWriter()));
    }

    @Test
    void svgIsWellFormedAndAtTrueSize() throws Exception {
        StringWriter out = new StringWriter();
        SvgWriter.write(List.of(new Shape(Contour.rectangle(0, 0, 100, 50), List.of(Contour.circle(new Point(20, 20), 10)))), out);
        var svg = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(out.toString())))
                .getDocumentElement();
        assertEquals("104mm", svg.getAttribute("width"));
        assertEquals("-2 -52 104 54", svg.getAttribute("viewBox"));
        String path = svg.getElementsByTagName("path").item(0).getAttributes().getNamedItem("d").getNodeValue();
        assertTrue(path.startsWith("M0 0L100 0L100 -50L0 -50L0 0Z"), path);
        assertTrue(path.contains("A5 5 0 0 1 15 -20"), path); // the hole runs clockwise: half a circle from (25, 20) to (15, 20)
    }
}
