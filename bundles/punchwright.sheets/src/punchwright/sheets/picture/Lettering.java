// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.picture;

import java.awt.geom.Path2D;
import java.text.Normalizer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Single-stroke capital lettering on a grid of 4 by 6 for a letter; drawn, not set, so it needs no installed font. */
final class Lettering {

    private static final double GRID = 6;
    private static final double ADVANCE = 5.6;
    private static final Map<Character, String> STROKES = new HashMap<>();

    static {
        String[] glyphs = {"0 10 30 41 45 36 16 05 01 10", "1 04 26 20", "2 05 16 36 45 44 00 40",
            "3 05 16 36 45 44 33 13|33 42 41 30 10 01", "4 30 36 02 42", "5 46 06 04 34 43 41 30 10 01",
            "6 45 36 16 05 01 10 30 41 42 33 13 02", "7 06 46 10", "8 13 04 05 16 36 45 44 33 13 02 01 10 30 41 42 33",
            "9 01 10 30 41 45 36 16 05 04 13 33 44", "A 00 26 40|12 32", "B 00 06 36 45 44 33 03|33 42 41 30 00",
            "C 45 36 16 05 01 10 30 41", "D 00 06 26 45 41 20 00", "E 46 06 00 40|03 33", "F 46 06 00|03 33",
            "G 45 36 16 05 01 10 30 41 43 23", "H 00 06|40 46|03 43", "I 20 26", "J 46 41 30 10 01", "K 00 06|46 03 40",
            "L 06 00 40", "M 00 06 23 46 40", "N 00 06 40 46", "O 10 30 41 45 36 16 05 01 10", "P 00 06 36 45 44 33 03",
            "Q 10 30 41 45 36 16 05 01 10|22 40", "R 00 06 36 45 44 33 03|23 40", "S 45 36 16 05 04 13 33 42 41 30 10 01",
            "T 06 46|26 20", "U 06 01 10 30 41 46", "V 06 20 46", "W 06 10 23 30 46", "X 00 46|06 40", "Y 06 23 46|23 20",
            "Z 06 46 00 40", ". 20 21", ", 21 10", "- 13 33", "+ 03 43|21 25", "/ 00 46", "( 36 25 21 30", ") 16 25 21 10",
            ": 21 22|24 25", "= 02 42|04 44", "_ 00 40", "x 01 45|05 41", "# 10 16|30 36|02 42|04 44", "* 11 35|15 31"};
        for (String glyph : glyphs) {
            STROKES.put(glyph.charAt(0), glyph.substring(2));
        }
    }

    private Lettering() {
    }

    /** Width of a text of this height. */
    static double width(String text, double height) {
        return spell(text).length() * ADVANCE * height / GRID;
    }

    /** The strokes of a text, base line from (x, y), y upwards; {@code up} is 1 where y grows upwards and -1 where downwards. */
    static Path2D path(String text, double x, double y, double height, double up) {
        Path2D path = new Path2D.Double();
        double scale = height / GRID;
        double at = x;
        for (char c : spell(text).toCharArray()) {
            String strokes = c == ' ' ? "" : STROKES.getOrDefault(c, "00 06 46 40 00");
            for (String line : strokes.isEmpty() ? new String[0] : strokes.split("\\|")) {
                add(path, line, at, y, scale, up);
            }
            at += ADVANCE * scale;
        }
        return path;
    }

    private static void add(Path2D path, String line, double x, double y, double scale, double up) {
        boolean first = true;
        for (String point : line.split(" ")) {
            double px = x + (point.charAt(0) - '0') * scale;
            double py = y + up * (point.charAt(1) - '0') * scale;
            if (first) {
                path.moveTo(px, py);
            } else {
                path.lineTo(px, py);
            }
            first = false;
        }
    }

    /** Capitals; umlauts are spelled out; the multiplication sign stays. */
    private static String spell(String text) {
        String spelled = text.replace("ß", "ss").replace("ä", "ae").replace("ö", "oe").replace("ü", "ue").replace("Ä", "AE")
                .replace("Ö", "OE").replace("Ü", "UE").replace("×", "\u0001");
        String plain = Normalizer.normalize(spelled, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
        return plain.toUpperCase(Locale.ROOT).replace('\u0001', 'x');
    }
}
