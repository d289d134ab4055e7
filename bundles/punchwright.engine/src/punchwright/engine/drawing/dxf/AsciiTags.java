// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.io.IOException;
import java.io.InputStream;

/** Tags of the text form: a line with the group code, a line with the value. */
final class AsciiTags implements TagSource {

    private final InputStream in;
    private final LineReader lines;
    private final NameCache names = new NameCache();
    private int code;
    private boolean endedInside;
    private int badCodes;
    private long firstBadCode;

    AsciiTags(InputStream in) {
        this.in = in;
        this.lines = new LineReader(in);
    }

    @Override
    public boolean next() throws IOException {
        while (lines.next()) {
            if (lines.from == lines.to) {
                continue;
            }
            code = Numbers.parseCode(lines.bytes, lines.from, lines.to);
            boolean good = code >= 0 && code <= 1071;
            if (!good) {
                firstBadCode = badCodes++ == 0 ? lines.line() : firstBadCode;
            }
            if (!lines.next()) {
                endedInside = true;
                return false;
            }
            if (good) {
                return true;
            }
        }
        return false;
    }

    @Override
    public int code() {
        return code;
    }

    @Override
    public boolean is(String word) {
        if (lines.to - lines.from != word.length()) {
            return false;
        }
        for (int i = 0; i < word.length(); i++) {
            int c = lines.bytes[lines.from + i];
            if ((c >= 'a' && c <= 'z' ? c - 32 : c) != word.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    @Override
    public String text() {
        return names.get(lines.bytes, lines.from, lines.to);
    }

    @Override
    public String untrimmedText() {
        return names.get(lines.bytes, lines.untrimmedFrom, lines.untrimmedTo);
    }

    @Override
    public double number() {
        double v = Numbers.parse(lines.bytes, lines.from, lines.to);
        return Math.abs(v) <= LARGEST ? v : Double.NaN;
    }

    @Override
    public long place() {
        return lines.line();
    }

    @Override
    public boolean endedInsideTag() {
        return endedInside;
    }

    @Override
    public int badCodes() {
        return badCodes;
    }

    @Override
    public long firstBadCodePlace() {
        return firstBadCode;
    }

    @Override
    public void decodeWith(TextDecoder decoder) {
        names.decodeWith(decoder);
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
