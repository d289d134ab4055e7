// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Tags of the binary form. Up to R12 a group code is one byte (255 announces a two-byte code), later two bytes, low byte
 * first; the code decides the type of the value (DXF Reference, "Binary DXF Files").
 */
final class BinaryTags implements TagSource {

    static final byte[] SIGNATURE = "AutoCAD Binary DXF\r\n\u001a\0".getBytes(StandardCharsets.ISO_8859_1);

    private enum Kind {
        TEXT(-1), CHUNK(-2), REAL(8), SHORT(2), INT(4), LONG(8), BYTE(1);

        private final int size;

        Kind(int size) {
            this.size = size;
        }
    }

    /** Upper ends of the ranges of group codes and the type of their values. */
    private static final int[] ENDS = {9, 59, 79, 89, 99, 109, 149, 169, 179, 209, 239, 269, 289, 299, 309, 319, 369, 389, 399,
        409, 419, 429, 439, 449, 459, 469, 999, 1003, 1004, 1009, 1059, 1070, 1071};
    private static final Kind[] KINDS = {Kind.TEXT, Kind.REAL, Kind.SHORT, Kind.SHORT, Kind.INT, Kind.TEXT, Kind.REAL, Kind.LONG,
        Kind.SHORT, Kind.SHORT, Kind.REAL, Kind.SHORT, Kind.SHORT, Kind.BYTE, Kind.TEXT, Kind.CHUNK, Kind.TEXT, Kind.SHORT,
        Kind.TEXT, Kind.SHORT, Kind.TEXT, Kind.INT, Kind.TEXT, Kind.INT, Kind.INT, Kind.REAL, Kind.TEXT, Kind.TEXT,
        Kind.CHUNK, Kind.TEXT, Kind.REAL, Kind.SHORT, Kind.INT};

    private final InputStream in;
    private final boolean wideCodes;
    private TextDecoder decoder = TextDecoder.GUESS;
    private byte[] buffer = new byte[256];
    private int length;
    private int code;
    private double value;
    private boolean isText;
    private long offset = SIGNATURE.length;
    private boolean endedInside;

    /** The stream stands after the signature; {@code wideCodes} for two-byte group codes. */
    BinaryTags(InputStream in, boolean wideCodes) {
        this.in = in;
        this.wideCodes = wideCodes;
    }

    @Override
    public boolean next() throws IOException {
        int first = in.read();
        if (first < 0) {
            return false;
        }
        offset++;
        try {
            code = wideCodes ? first | read() << 8 : first == 255 ? read() | read() << 8 : first;
            readValue();
            return true;
        } catch (EOFException early) {
            endedInside = true;
            return false;
        }
    }

    private void readValue() throws IOException {
        int i = Arrays.binarySearch(ENDS, code);
        i = i < 0 ? -i - 1 : i;
        if (i >= KINDS.length) {
            throw new IOException("group code " + code + " at byte " + offset + " has no known type of value");
        }
        Kind kind = KINDS[i];
        isText = kind.size < 0;
        switch (kind) {
            case TEXT -> readText();
            case CHUNK -> readChunk();
            case REAL -> value = Double.longBitsToDouble(readInteger(8));
            default -> value = signed(readInteger(kind.size), kind.size);
        }
    }

    private static double signed(long raw, int size) {
        int shift = 64 - 8 * size;
        return raw << shift >> shift;
    }

    private long readInteger(int size) throws IOException {
        long v = 0;
        for (int i = 0; i < size; i++) {
            v |= (long) read() << 8 * i;
        }
        return v;
    }

    private void readText() throws IOException {
        length = 0;
        for (int c = read(); c != 0; c = read()) {
            if (length == buffer.length && length < LineReader.LONGEST) {
                buffer = Arrays.copyOf(buffer, length * 2);
            }
            if (length < buffer.length) {
                buffer[length++] = (byte) c;
            }
        }
    }

    private void readChunk() throws IOException {
        int n = read();
        length = 0;
        for (int i = 0; i < n; i++) {
            buffer[length++] = (byte) read();
        }
    }

    private int read() throws IOException {
        int c = in.read();
        if (c < 0) {
            throw new EOFException();
        }
        offset++;
        return c;
    }

    @Override
    public int code() {
        return code;
    }

    @Override
    public boolean is(String word) {
        return isText && text().equalsIgnoreCase(word);
    }

    @Override
    public String text() {
        return untrimmedText().strip();
    }

    @Override
    public String untrimmedText() {
        return isText ? decoder.decode(buffer, 0, length) : Double.toString(value);
    }

    @Override
    public double number() {
        double v = isText ? Numbers.parse(buffer, 0, length) : value;
        return Math.abs(v) <= LARGEST ? v : Double.NaN;
    }

    @Override
    public long place() {
        return offset;
    }

    @Override
    public boolean endedInsideTag() {
        return endedInside;
    }

    @Override
    public int badCodes() {
        return 0;
    }

    @Override
    public long firstBadCodePlace() {
        return 0;
    }

    @Override
    public void decodeWith(TextDecoder newDecoder) {
        decoder = newDecoder;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
