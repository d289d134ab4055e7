// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;

/** Small DXF texts for tests, written as "code value" pairs with a bar between them. */
final class Dxf {

    static final String PLATE = line(0, 0, 200, 0) + line(200, 0, 200, 100) + line(200, 100, 0, 100) + line(0, 100, 0, 0);

    private Dxf() {
    }

    static String tags(String pairs) {
        StringBuilder out = new StringBuilder();
        for (String pair : pairs.split("\\|")) {
            String[] codeAndValue = pair.strip().split(" ", 2);
            out.append(codeAndValue[0]).append('\n').append(codeAndValue.length > 1 ? codeAndValue[1] : "").append('\n');
        }
        return out.toString();
    }

    static String header(String pairs) {
        return tags("0 SECTION|2 HEADER|" + pairs + "|0 ENDSEC");
    }

    static String mm() {
        return header("9 $ACADVER|1 AC1015|9 $INSUNITS|70 4");
    }

    static String entities(String text) {
        return tags("0 SECTION|2 ENTITIES") + text + tags("0 ENDSEC|0 EOF");
    }

    static String blocks(String text) {
        return tags("0 SECTION|2 BLOCKS") + text + tags("0 ENDSEC");
    }

    static String block(String name, String text) {
        return tags("0 BLOCK|8 0|2 " + name + "|70 0|10 0|20 0") + text + tags("0 ENDBLK");
    }

    static String line(double x1, double y1, double x2, double y2) {
        return tags("0 LINE|8 0|10 " + x1 + "|20 " + y1 + "|11 " + x2 + "|21 " + y2);
    }

    static String circle(double x, double y, double r) {
        return tags("0 CIRCLE|8 0|10 " + x + "|20 " + y + "|40 " + r);
    }

    static DrawingResult survey(String text) throws DrawingException {
        return DrawingReader.survey(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "test.dxf",
                DrawingOptions.USUAL);
    }

    static DrawingResult read(String text) throws DrawingException {
        return read(text, DrawingOptions.USUAL);
    }

    static DrawingResult read(String text, DrawingOptions options) throws DrawingException {
        return DrawingReader.read(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), "test.dxf", options);
    }
}
