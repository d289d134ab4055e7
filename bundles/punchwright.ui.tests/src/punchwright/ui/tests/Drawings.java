// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Small drawings in mm, as text: group code and value in pairs. */
final class Drawings {

    private Drawings() {
    }

    static void write(Path file, String... entities) throws IOException {
        Files.writeString(file, tags("0 SECTION|2 HEADER|9 $INSUNITS|70 4|0 ENDSEC|0 SECTION|2 ENTITIES|" + String.join("",
                entities)
                + "0 ENDSEC|0 EOF"));
    }

    private static String tags(String pairs) {
        StringBuilder text = new StringBuilder();
        for (String pair : pairs.split("\\|")) {
            text.append(pair.replaceFirst(" ", "\n")).append('\n');
        }
        return text.toString();
    }

    static String plate(String layer, double x, double y, double length, double width) {
        return polyline(layer, 1, x, y, x + length, y, x + length, y + width, x, y + width);
    }

    /** A right angle of two unequal legs, 60 x 20 and 30 x 30, or its mirror image. */
    static String bracket(double x, boolean mirrored) {
        return mirrored ? polyline("0", 1, x, 0, x + 60, 0, x + 60, 50, x + 30, 50, x + 30, 20, x, 20)
                : polyline("0", 1, x, 0, x + 60, 0, x + 60, 20, x + 30, 20, x + 30, 50, x, 50);
    }

    static String open(String layer, double... xy) {
        return polyline(layer, 0, xy);
    }

    private static String polyline(String layer, int closed, double... xy) {
        StringBuilder text = new StringBuilder("0 LWPOLYLINE|8 " + layer + "|90 " + xy.length / 2 + "|70 " + closed + "|");
        for (int i = 0; i < xy.length; i += 2) {
            text.append("10 ").append(xy[i]).append("|20 ").append(xy[i + 1]).append('|');
        }
        return text.toString();
    }

    static String circle(String layer, double x, double y, double radius) {
        return "0 CIRCLE|8 " + layer + "|10 " + x + "|20 " + y + "|40 " + radius + "|";
    }

    static String line(String layer, double x1, double y1, double x2, double y2) {
        return "0 LINE|8 " + layer + "|10 " + x1 + "|20 " + y1 + "|11 " + x2 + "|21 " + y2 + "|";
    }

    static String text(String layer, double x, double y, double height, String words) {
        return "0 TEXT|8 " + layer + "|10 " + x + "|20 " + y + "|40 " + height + "|1 " + words + "|";
    }
}
