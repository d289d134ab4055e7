// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import javax.xml.parsers.DocumentBuilderFactory;

import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
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

    @Test
    void aWrittenLayoutReadsBackTheSame() throws IOException, DrawingException {
        Random random = new Random(11);
        for (int round = 0; round < 20; round++) {
            List<Contour> sheet = List.of(Contour.rectangle(-50, -50, 3000, 1500));
            List<Shape> placed = new ArrayList<>();
            List<Contour> contours = new ArrayList<>();
            for (int k = 0; k < 12; k++) {
                Shape part = part(random);
                Point c = part.bounds().center();
                Shape there = part.moved(Pose.at(-c.x(), -c.y(), 0)).moved(new Pose(150 + k % 6 * 400 + random.nextDouble(),
                        150 + k / 6 * 500, random.nextInt(4) * 90 + random.nextDouble() * (k % 2), k % 3 == 0));
                placed.add(there);
                contours.add(there.outer());
                contours.addAll(there.holes());
            }
            StringWriter out = new StringWriter();
            Map<String, List<Contour>> layers = new LinkedHashMap<>();
            layers.put("SHEET", sheet);
            layers.put("PARTS", contours);
            DxfWriter.writeLayers(layers, out);
            LayerRules rules = new LayerRules(List.of(LayerRule.forLayer("SHEET", LayerMeaning.IGNORE)), LayerMeaning.CUT);
            DrawingResult r = Dxf.read(out.toString(), DrawingOptions.USUAL.withLayerRules(rules));
            assertEquals(placed.size(), r.shapes().size());
            for (Shape part : placed) {
                Shape back = r.shapes().stream().min(Comparator.comparingDouble(
                        s -> s.bounds().center().distance(part.bounds().center()))).orElseThrow();
                assertSame(part.outer(), back.outer());
                assertEquals(part.holes().size(), back.holes().size());
                for (int h = 0; h < part.holes().size(); h++) {
                    assertSame(part.holes().get(h), back.holes().get(h));
                }
            }
        }
    }

    /** Closed runs of arcs of any sweep up to nearly a full turn, at any size from 1 to 2000 mm. */
    @Test
    void arcsOfAnySweepReadBackTheSame() throws IOException, DrawingException {
        Random random = new Random(12);
        for (int i = 0; i < 300; i++) {
            double r = 0.5 * Math.pow(2000, random.nextDouble());
            double sweep = Math.toRadians(1 + 358 * random.nextDouble());
            Arc arc = new Arc(
                    new Point(random.nextDouble() * 2000, random.nextDouble() * 1000), r, random.nextDouble() * 6, sweep);
            Contour drop = new Contour(List.of(arc, new Line(arc.end(), arc.start())));
            StringWriter out = new StringWriter();
            DxfWriter.write(List.of(new Shape(drop, List.of())), out);
            Shape back = Dxf.survey(out.toString()).shapes().get(0);
            assertSame(drop, back.outer());
            Arc again = (Arc) back.outer().segments().get(0);
            assertEquals(r, again.radiusMm(), E);
            assertTrue(again.center().distance(arc.center()) < E);
        }
    }

    private static void assertSame(Contour a, Contour b) {
        assertEquals(a.segments().size(), b.segments().size());
        assertEquals(a.areaMm2(), b.areaMm2(), E * Math.max(1, a.lengthMm())); // what 1e-6 mm along the whole edge makes
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
        assertThrows(IllegalArgumentException.class, () -> DxfWriter.writeLayers(Map.of("no blanks", List.of()),
                new StringWriter()));
    }

    @Test
    void svgIsWellFormedAndAtTrueSize() throws Exception {
        StringWriter out = new StringWriter();
        SvgWriter.write(List.of(new Shape(Contour.rectangle(0, 0, 100, 50), List.of(Contour.circle(new Point(20, 20), 10)))),
                out);
        var svg = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new InputSource(new StringReader(out.toString())))
                .getDocumentElement();
        assertEquals("104mm", svg.getAttribute("width"));
        assertEquals("-2 -52 104 54", svg.getAttribute("viewBox"));
        String path = svg.getElementsByTagName("path").item(0).getAttributes().getNamedItem("d").getNodeValue();
        assertTrue(path.startsWith("M0 0L100 0L100 -50L0 -50L0 0Z"), path);
        assertTrue(path.contains("A5 5 0 0 1 15 -20"), path); // the hole runs clockwise: half a circle from (25, 20) to (15, 20)
    }
}
