// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

/** Gives the same String for the same bytes, so that a million entities on one layer share one name. */
final class NameCache {

    private static final int SIZE = 1 << 10;
    private static final int LONGEST = 64;

    private final byte[][] keys = new byte[SIZE][];
    private final String[] names = new String[SIZE];
    private TextDecoder decoder = TextDecoder.GUESS;

    void decodeWith(TextDecoder newDecoder) {
        decoder = newDecoder;
        java.util.Arrays.fill(keys, null);
    }

    String get(byte[] b, int from, int to) {
        if (to - from > LONGEST) {
            return decoder.decode(b, from, to);
        }
        int hash = 1;
        for (int i = from; i < to; i++) {
            hash = hash * 31 + b[i];
        }
        int slot = (hash ^ hash >>> 10) & SIZE - 1;
        if (keys[slot] == null || !java.util.Arrays.equals(keys[slot], 0, keys[slot].length, b, from, to)) {
            keys[slot] = java.util.Arrays.copyOfRange(b, from, to);
            names[slot] = decoder.decode(b, from, to);
        }
        return names[slot];
    }
}
