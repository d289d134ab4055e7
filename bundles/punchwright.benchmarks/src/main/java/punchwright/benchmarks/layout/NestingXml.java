// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * The XML form of published nesting problems, as remembered: boards and pieces that name polygons, polygons as segments.
 * The strip
 * is as wide as the first board is high (in y).
 */
final class NestingXml {

    private NestingXml() {
    }

    /** @throws IllegalArgumentException saying what is missing */
    static StripInstance read(String text, String name) {
        Document xml = parse(text);
        Map<String, double[][]> polygons = new LinkedHashMap<>();
        for (Element p : all(xml.getDocumentElement(), "polygon")) {
            polygons.put(p.getAttribute("id"), points(p));
        }
        List<StripInstance.Kind> kinds = new ArrayList<>();
        double width = Double.NaN;
        for (Element group : all(xml.getDocumentElement(), "boards")) {
            for (Element piece : all(group, "piece")) {
                width = Double.isNaN(width) ? height(rings(piece, polygons).get(0)) : width;
            }
        }
        for (Element group : all(xml.getDocumentElement(), "lot")) {
            for (Element piece : all(group, "piece")) {
                String count = piece.getAttribute("quantity");
                kinds.add(new StripInstance.Kind(rings(piece, polygons), angles(piece),
                        count.isBlank() ? 1 : (int) Double.parseDouble(count)));
            }
        }
        if (Double.isNaN(width)) {
            throw new IllegalArgumentException("no board");
        }
        return StripInstance.of(name, width, kinds);
    }

    private static Document parse(String text) {
        try {
            DocumentBuilderFactory f = DocumentBuilderFactory.newInstance();
            f.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            f.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            f.setNamespaceAware(true);
            var builder = f.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(text)));
        } catch (Exception e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    private static List<Element> all(Element in, String local) {
        NodeList list = in.getElementsByTagNameNS("*", local);
        List<Element> out = new ArrayList<>();
        for (int i = 0; i < list.getLength(); i++) {
            out.add((Element) list.item(i));
        }
        return out;
    }

    private static double[][] points(Element polygon) {
        List<double[]> out = new ArrayList<>();
        for (Element s : all(polygon, "segment")) {
            out.add(new double[] {Double.parseDouble(s.getAttribute("x0")), Double.parseDouble(s.getAttribute("y0"))});
        }
        return out.toArray(double[][]::new);
    }

    /** The outer polygon first, then those that are holes (type other than 0). */
    private static List<double[][]> rings(Element piece, Map<String, double[][]> polygons) {
        List<double[][]> out = new ArrayList<>();
        for (Element c : all(piece, "component")) {
            double[][] p = polygons.get(c.getAttribute("idPolygon"));
            if (p == null) {
                throw new IllegalArgumentException("no polygon " + c.getAttribute("idPolygon"));
            }
            boolean hole = !c.getAttribute("type").isBlank() && !c.getAttribute("type").equals("0");
            out.add(hole ? out.size() : 0, p);
        }
        if (out.isEmpty()) {
            throw new IllegalArgumentException("piece " + piece.getAttribute("id") + " names no polygon");
        }
        return out;
    }

    private static List<Double> angles(Element piece) {
        List<Double> out = new ArrayList<>();
        for (Element e : all(piece, "enumeration")) {
            out.add(Double.parseDouble(e.getAttribute("angle")));
        }
        return out.isEmpty() ? List.of(0.0) : out.stream().distinct().toList();
    }

    private static double height(double[][] ring) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double[] p : ring) {
            low = Math.min(low, p[1]);
            high = Math.max(high, p[1]);
        }
        return high - low;
    }
}
