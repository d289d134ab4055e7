// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.intake;

/** Small drawings as text: group code and value in pairs. */
final class Drawn {

    private Drawn() {
    }

    /** A drawing in mm. */
    static String mm(String... entities) {
        return tags("0 SECTION|2 HEADER|9 $INSUNITS|70 4|0 ENDSEC|0 SECTION|2 ENTITIES|" + String.join("",
                entities) + "0 ENDSEC|0 EOF");
    }

    private static String tags(String pairs) {
        StringBuilder text = new StringBuilder();
        for (String pair : pairs.split("\\|")) {
            text.append(pair.replaceFirst(" ", "\n")).append('\n');
        }
        return text.toString();
    }

    static String plate(double x, double y, double length, double width) {
        return polyline(true, x, y, x + length, y, x + length, y + width, x, y + width);
    }

    static String polyline(boolean closed, double... xy) {
        StringBuilder text = new StringBuilder("0 LWPOLYLINE|8 0|90 " + xy.length / 2 + "|70 " + (closed ? 1 : 0) + "|");
        for (int i = 0; i < xy.length; i += 2) {
            text.append("10 ").append(xy[i]).append("|20 ").append(xy[i + 1]).append('|');
        }
        return text.toString();
    }

    static String circle(double x, double y, double radius) {
        return "0 CIRCLE|8 0|10 " + x + "|20 " + y + "|40 " + radius + "|";
    }
}
