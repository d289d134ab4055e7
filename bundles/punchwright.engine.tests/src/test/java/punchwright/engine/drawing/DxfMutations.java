// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Makes small drawings of all entity types and damages them: by seed the same each time, as text or in the binary form. */
final class DxfMutations {

    /** A tag of a drawing: group code and value. */
    private record Tag(String code, String value) {
    }

    private static final String[] VALUES = {"1e308", "-1e308", "NaN", "Infinity", "-1", "0", "-0.0", "1e-320", "2147483647",
            "-2147483648",
        "9223372036854775807", "1000000", "32767", "100000", "999999999999999", "1,5", "", "text", "0x10", "1e13", "1e12",
        "-5e-324", "360",
        "16", "255", "\u00E4\u20AC", "\\U+12", "*", "H", "B1", "LINE", "SECTION", "ENDSEC", "EOF", "SEQEND", "ENDBLK", "BLOCK"};
    private static final String[] CODES = {"0", "1", "2", "3", "5", "6", "8", "9", "10", "11", "12", "13", "20", "21", "30",
            "40", "41", "42",
        "43", "44", "45", "50", "51", "60", "62", "66", "67", "70", "71", "72", "73", "74", "90", "100", "101", "210", "220",
        "230", "310", "999", "1004", "1071", "-1", "1072", "99999"};
    private static final String[] TYPES = {"LINE", "ARC", "CIRCLE", "ELLIPSE", "LWPOLYLINE", "POLYLINE", "VERTEX", "SEQEND",
            "SPLINE", "INSERT",
        "SOLID", "TRACE", "TEXT", "MTEXT", "POINT", "ATTRIB", "HATCH", "NONSENSE"};

    private final Random random;

    DxfMutations(long seed) {
        random = new Random(seed);
    }

    byte[] next() {
        List<Tag> tags = drawing();
        for (int k = random.nextInt(5); k > 0; k--) {
            mutate(tags);
        }
        byte[] bytes = random.nextInt(3) == 0 ? binary(tags) : text(tags);
        for (int k = random.nextInt(3) == 0 ? random.nextInt(8) : 0; k > 0; k--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return random.nextInt(6) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes;
    }

    private List<Tag> drawing() {
        List<Tag> tags = new ArrayList<>();
        add(tags, "0 SECTION|2 HEADER|9 $ACADVER|1 " + pick("AC1009", "AC1015", "AC1027") + "|9 $DWGCODEPAGE|3 "
                + pick("ANSI_1252", "ANSI_932", "NONE") + "|9 $INSUNITS|70 " + random.nextInt(25)
                + "|0 ENDSEC|0 SECTION|2 TABLES|0 TABLE"
                + "|2 LAYER|0 LAYER|2 ICE|70 1|62 7|0 LAYER|2 DARK|62 -3|6 CENTER|0 ENDTAB|0 ENDSEC|0 SECTION|2 BLOCKS");
        for (int b = 0; b < 4; b++) {
            add(tags, "0 BLOCK|8 0|2 B" + b + "|70 0|10 " + number() + "|20 0");
            entities(tags, random.nextInt(4), b);
            add(tags, "0 ENDBLK");
        }
        add(tags, "0 ENDSEC|0 SECTION|2 ENTITIES|0 LWPOLYLINE|8 0|90 4|70 1|10 0|20 0|10 200|20 0|10 200|20 100|10 0|20 100");
        entities(tags, random.nextInt(12), 4);
        add(tags, "0 ENDSEC|0 EOF");
        return tags;
    }

    private void entities(List<Tag> tags, int count, int blocks) {
        for (int i = 0; i < count; i++) {
            add(tags, entity(blocks));
        }
    }

    private String entity(int blocks) {
        String at = "|8 " + pick("0", "ICE", "DARK", "BEND", "0") + "|10 " + number() + "|20 " + number();
        return switch (random.nextInt(12)) {
            case 0 -> "0 LINE" + at + "|11 " + number() + "|21 " + number();
            case 1 -> "0 ARC" + at + "|40 " + number() + "|50 " + number() + "|51 " + number();
            case 2 -> "0 CIRCLE" + at + "|40 " + number() + "|210 0|220 " + pick("0", "1") + "|230 " + pick("1", "-1");
            case 3 -> "0 ELLIPSE" + at + "|11 " + number() + "|21 " + number() + "|40 0.5|41 0|42 "
                    + pick("6.2831853", "2", number());
            case 4 -> "0 LWPOLYLINE" + at + "|42 " + number() + "|10 " + number() + "|20 9|10 30|20 30|70 "
                    + random.nextInt(2) + "|90 3";
            case 5 -> "0 POLYLINE|8 0|66 1|70 " + pick("0", "1", "8", "16", "64") + "|0 VERTEX" + at
                    + "|42 1|0 VERTEX|10 7|20 7|70 "
                    + pick("0", "16") + "|0 VERTEX|10 9|20 0|0 SEQEND";
            case 6 -> "0 SPLINE|8 0|70 " + pick("8", "1", "11") + "|71 2|72 6|73 3|40 0|40 0|40 0|40 1|40 1|40 1" + at
                    + "|10 5|20 "
                    + number() + "|10 9|20 0|41 1|41 " + pick("1", "0.5", "0") + "|41 1";
            case 7 -> "0 SPLINE|8 0|71 3|11 0|21 0|11 " + number() + "|21 5|11 9|21 " + number() + "|12 0|22 1";
            case 8 -> "0 INSERT" + at + "|2 B" + random.nextInt(Math.max(1, blocks)) + "|41 " + number() + "|42 "
                    + number() + "|50 "
                    + number() + "|70 " + pick("1", "3", "1", "100") + "|71 " + pick("1", "2", "1", "30")
                    + "|44 5|45 " + number();
            case 9 -> "0 " + pick("SOLID", "TRACE") + at + "|11 " + number() + "|21 0|12 0|22 9|13 9|23 9";
            case 10 -> "0 " + pick("TEXT", "MTEXT", "ATTRIB") + at + "|40 3|1 {\\H2x;A\\P%%c\\S1/2;^I" + number()
                    + "}|50 " + number();
            default -> "0 POINT" + at;
        };
    }

    private String pick(String... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private String number() {
        return random.nextInt(12) == 0 ? pick("0", "-5", "1e6", "0.001", "3e11", "1e-9")
                : Double.toString(Math.rint(random.nextDouble() * 2000) / 10);
    }

    private void mutate(List<Tag> tags) {
        int i = random.nextInt(tags.size());
        Tag t = tags.get(i);
        switch (random.nextInt(9)) {
            case 0 -> tags.remove(i);
            case 1 -> tags.add(i, t);
            case 2 -> tags.set(i, tags.set(random.nextInt(tags.size()), t));
            case 3 -> tags.set(i, new Tag(t.code, pick(VALUES)));
            case 4 -> tags.set(i, new Tag(pick(CODES), t.value));
            case 5 -> tags.set(i, new Tag("0", pick(TYPES)));
            case 6 -> tags.set(i, new Tag(t.code, (pick("9", "A", "1.", " ") + t.value).repeat(1 + random.nextInt(3000))));
            case 7 -> repeat(tags, i);
            default -> tags.add(i, new Tag(pick(CODES), pick(VALUES)));
        }
    }

    /** A run of tags many times over: thousands of vertices, knots, entities on one place. */
    private void repeat(List<Tag> tags, int i) {
        List<Tag> run = List.copyOf(tags.subList(i, Math.min(tags.size(), i + 1 + random.nextInt(12))));
        List<Tag> many = new ArrayList<>();
        for (int k = random.nextInt(random.nextInt(20) == 0 ? 2000 : 60); k > 0; k--) {
            many.addAll(run);
        }
        tags.addAll(i, many);
    }

    private static void add(List<Tag> tags, String pairs) {
        for (String pair : pairs.split("\\|")) {
            String[] both = pair.split(" ", 2);
            tags.add(new Tag(both[0], both.length > 1 ? both[1] : ""));
        }
    }

    private static byte[] text(List<Tag> tags) {
        StringBuilder out = new StringBuilder();
        tags.forEach(t -> out.append(t.code).append('\n').append(t.value).append('\n'));
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** The binary form with two-byte group codes; values by the type that the code has (DXF Reference, "Binary DXF Files"). */
    private static byte[] binary(List<Tag> tags) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("AutoCAD Binary DXF\r\n\u001a\0".getBytes(StandardCharsets.ISO_8859_1));
        for (Tag t : tags) {
            int code = (int) parsed(t.code);
            little(out, code, 2);
            if (code >= 10 && code < 60 || code >= 110 && code < 150 || code >= 210 && code < 240) {
                little(out, Double.doubleToLongBits(parsed(t.value)), 8);
            } else if (code >= 60 && code < 80 || code >= 170 && code < 180) {
                little(out, (long) parsed(t.value), 2);
            } else if (code >= 90 && code < 100) {
                little(out, (long) parsed(t.value), 4);
            } else {
                out.writeBytes(t.value.getBytes(StandardCharsets.UTF_8));
                out.write(0);
            }
        }
        return out.toByteArray();
    }

    private static double parsed(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException none) {
            return Double.NaN;
        }
    }

    private static void little(ByteArrayOutputStream out, long value, int size) {
        for (int i = 0; i < size; i++) {
            out.write((int) (value >> 8 * i));
        }
    }
}
