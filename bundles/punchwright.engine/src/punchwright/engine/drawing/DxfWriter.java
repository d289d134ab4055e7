// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.io.IOException;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;
import punchwright.engine.geometry.Shape;

/**
 * Writes contours as DXF R12 text in mm: a circle as CIRCLE, every other contour as a closed POLYLINE with bulges, so that
 * each stays one entity and arcs stay exact. Numbers have all their digits: what is read back differs by less than 1e-6 mm.
 */
public final class DxfWriter {

    /** Layer of the edges of parts. */
    public static final String CUT_LAYER = "CUT";

    private final Writer out;

    private DxfWriter(Writer out) {
        this.out = out;
    }

    /** Writes the shapes where they lie, all on the layer {@link #CUT_LAYER}. */
    public static void write(List<Shape> shapes, Path file) throws IOException {
        try (Writer out = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
            write(shapes, out);
        }
    }

    /** The same to a writer, which the caller closes. */
    public static void write(List<Shape> shapes, Writer out) throws IOException {
        List<Contour> contours = new ArrayList<>();
        for (Shape shape : shapes) {
            contours.add(shape.outer());
            contours.addAll(shape.holes());
        }
        Map<String, List<Contour>> layers = new LinkedHashMap<>();
        layers.put(CUT_LAYER, contours);
        writeLayers(layers, out);
    }

    /**
     * Writes contours by layer, in order.
     *
     * @param layers names of letters, digits, '-' and '_' (R12); a part layout may have one for sheets and one for parts
     */
    public static void writeLayers(Map<String, List<Contour>> layers, Writer out) throws IOException {
        DxfWriter writer = new DxfWriter(out);
        writer.head(layers);
        for (Map.Entry<String, List<Contour>> layer : layers.entrySet()) {
            for (Contour contour : layer.getValue()) {
                writer.contour(contour, layer.getKey());
            }
        }
        writer.tag(0, "ENDSEC").tag(0, "EOF");
    }

    private void head(Map<String, List<Contour>> layers) throws IOException {
        tag(0, "SECTION").tag(2, "HEADER").tag(9, "$ACADVER").tag(1, "AC1009").tag(9, "$INSUNITS").tag(70, "4").tag(0, "ENDSEC");
        tag(0, "SECTION").tag(2, "TABLES").tag(0, "TABLE").tag(2, "LAYER").tag(70, Integer.toString(layers.size()));
        int colour = 7;
        for (String name : layers.keySet()) {
            if (!name.matches("[A-Za-z0-9_-]{1,31}")) {
                throw new IllegalArgumentException("layer name \"" + name
                        + "\" is not possible in DXF R12: use letters, digits, - and _");
            }
            tag(0, "LAYER").tag(2, name).tag(70, "0").tag(62, Integer.toString(colour)).tag(6, "CONTINUOUS");
            colour = colour % 7 + 1;
        }
        tag(0, "ENDTAB").tag(0, "ENDSEC").tag(0, "SECTION").tag(2, "ENTITIES");
    }

    private void contour(Contour contour, String layer) throws IOException {
        double diameter = contour.segments().size() == 1 ? contour.circleDiameterMm(1e-9) : 0;
        if (diameter > 0) {
            Point c = ((Arc) contour.segments().get(0)).center();
            tag(0, "CIRCLE").tag(8, layer).point(c).number(40, diameter / 2);
            return;
        }
        tag(0, "POLYLINE").tag(8, layer).tag(66, "1").point(Point.ORIGIN).tag(70, "1");
        for (Segment s : contour.segments()) {
            tag(0, "VERTEX").tag(8, layer).point(s.start());
            if (s instanceof Arc arc) {
                number(42, Math.tan(arc.sweepRad() / 4));
            }
        }
        tag(0, "SEQEND").tag(8, layer);
    }

    private DxfWriter point(Point p) throws IOException {
        return number(10, p.x()).number(20, p.y()).tag(30, "0");
    }

    private DxfWriter number(int code, double value) throws IOException {
        return tag(code, Math.abs(value) < 1e-12 ? "0.0" : BigDecimal.valueOf(value).toPlainString());
    }

    private DxfWriter tag(int code, String value) throws IOException {
        String c = Integer.toString(code);
        out.write("  ".substring(Math.min(2, c.length() - 1)) + c + "\n" + value + "\n");
        return this;
    }
}
