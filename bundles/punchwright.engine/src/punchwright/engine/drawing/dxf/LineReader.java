// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;

/**
 * Lines of bytes, ended by LF, CR LF or CR, without white space at either end. Holds one line: of a longer one than
 * {@value #LONGEST} bytes the tail is read and dropped.
 */
final class LineReader {

    static final int LONGEST = 1 << 22;
    private static final int KEPT = LONGEST / 2;

    private final InputStream in;
    byte[] bytes = new byte[1 << 16];
    /** The line is {@code bytes[from..to)} until the next call. */
    int from;
    int to;
    /** The same with the white space. */
    int untrimmedFrom;
    int untrimmedTo;
    private int pos;
    private int limit;
    private long line;
    private boolean afterCr;
    private boolean atEnd;

    LineReader(InputStream in) {
        this.in = in;
    }

    long line() {
        return line;
    }

    /** False at the end of the data; a last line without an end counts as a line. */
    boolean next() throws IOException {
        skipLfAfterCr();
        int end = findEnd();
        if (end < 0) {
            return false;
        }
        line++;
        from = pos;
        to = end;
        untrimmedFrom = pos;
        untrimmedTo = end;
        afterCr = end < limit && bytes[end] == '\r';
        pos = Math.min(limit, end + 1);
        trim();
        return true;
    }

    private void skipLfAfterCr() throws IOException {
        if (afterCr && (pos < limit || fill()) && bytes[pos] == '\n') {
            pos++;
        }
        afterCr = false;
    }

    private int findEnd() throws IOException {
        int searched = 0;
        boolean cut = false;
        while (true) {
            int at = indexOfEnd(pos + searched);
            if (at < limit) {
                return cut ? dropTail(pos + KEPT, at) : at;
            }
            searched = at - pos;
            if (searched > LONGEST) {
                limit = pos + KEPT;
                searched = KEPT;
                cut = true;
            }
            if (!fill()) {
                return limit > pos ? limit : -1;
            }
        }
    }

    private int indexOfEnd(int start) {
        byte[] b = bytes;
        int at = start;
        while (at < limit && b[at] != '\n' && b[at] != '\r') {
            at++;
        }
        return at;
    }

    /** Moves the end of an over-long line down to where its kept part ends. */
    private int dropTail(int cut, int end) {
        System.arraycopy(bytes, end, bytes, cut, limit - end);
        limit -= end - cut;
        return cut;
    }

    private boolean fill() throws IOException {
        if (atEnd) {
            return false;
        }
        if (pos > 0) {
            System.arraycopy(bytes, pos, bytes, 0, limit - pos);
            limit -= pos;
            pos = 0;
        }
        if (limit == bytes.length) {
            bytes = Arrays.copyOf(bytes, bytes.length * 2);
        }
        int n = in.read(bytes, limit, bytes.length - limit);
        if (n <= 0) {
            atEnd = true;
            return false;
        }
        limit += n;
        return true;
    }

    private void trim() {
        while (from < to && (bytes[from] == ' ' || bytes[from] == '\t')) {
            from++;
        }
        while (to > from && (bytes[to - 1] == ' ' || bytes[to - 1] == '\t')) {
            to--;
        }
    }
}
