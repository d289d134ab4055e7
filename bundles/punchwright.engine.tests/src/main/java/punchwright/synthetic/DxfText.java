// SPDX-License-Identifier: EPL-2.0
package punchwright.synthetic;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Point;

/** Entities of a drawing in mm as DXF text, each kept apart so that they can be shuffled. */
final class DxfText {

    private static final String HEAD =
            "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1015\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n";

    private final List<String> entities = new ArrayList<>();

    List<String> entities() {
        return entities;
    }

    String text() {
        return HEAD + String.join("", entities) + "0\nENDSEC\n0\nEOF\n";
    }

    private static String head(String type, String layer) {
        return "0\n" + type + "\n8\n" + layer + "\n";
    }

    private static String point(int code, Point p) {
        return number(code, p.x()) + number(code + 10, p.y());
    }

    private static String number(int code, double value) {
        return code + "\n" + BigDecimal.valueOf(Math.abs(value) < 1e-13 ? 0 : value).toPlainString() + "\n";
    }

    void line(String layer, Point a, Point b) {
        entities.add(head("LINE", layer) + point(10, a) + point(11, b));
    }

    void circle(String layer, Point center, double radius) {
        entities.add(head("CIRCLE", layer) + point(10, center) + number(40, radius));
    }

    /** Counter-clockwise from one angle to the other, as the format wants it. */
    void arc(String layer, Point center, double radius, double fromRad, double toRad) {
        entities.add(head("ARC", layer) + point(10, center) + number(40, radius) + number(50, Math.toDegrees(fromRad))
                + number(51, Math.toDegrees(toRad)));
    }

    /** Closed; bulge i bends the piece after corner i. */
    void polyline(String layer, List<Point> corners, List<Double> bulges, boolean old) {
        StringBuilder out = new StringBuilder(head(old ? "POLYLINE" : "LWPOLYLINE", layer));
        out.append(old ? "66\n1\n" : "90\n" + corners.size() + "\n").append("70\n1\n");
        for (int i = 0; i < corners.size(); i++) {
            out.append(old ? head("VERTEX", layer) : "").append(point(10, corners.get(i)));
            if (bulges.get(i) != 0) {
                out.append(number(42, bulges.get(i)));
            }
        }
        entities.add(out + (old ? head("SEQEND", layer) : ""));
    }
}
