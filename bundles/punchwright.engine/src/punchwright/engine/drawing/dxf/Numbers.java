// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.nio.charset.StandardCharsets;

/**
 * Decimal numbers from bytes. The short way is exact: a whole number below 2^53 times or divided by a power of ten up to
 * 10^22 is rounded once (W. D. Clinger, "How to read floating point numbers accurately", PLDI 1990); all else goes
 * through {@link Double#parseDouble(String)}.
 */
final class Numbers {

    private static final double[] TEN = new double[23];

    static {
        double power = 1;
        for (int i = 0; i < TEN.length; i++) {
            TEN[i] = power;
            power *= 10;
        }
    }

    private Numbers() {
    }

    /** NaN when the bytes are not one finite decimal number (a comma, a word, nothing). */
    static double parse(byte[] b, int from, int to) {
        int i = from;
        boolean negative = false;
        if (i < to && (b[i] == '-' || b[i] == '+')) {
            negative = b[i] == '-';
            i++;
        }
        long digits = 0;
        int count = 0;
        int scale = 0;
        boolean point = false;
        for (; i < to; i++) {
            int c = b[i];
            if (c >= '0' && c <= '9') {
                digits = digits * 10 + (c - '0');
                count += digits == 0 ? 0 : 1;
                scale += point ? 1 : 0;
                if (count > 18) {
                    return slow(b, from, to);
                }
            } else if (c == '.' && !point) {
                point = true;
            } else {
                return slow(b, from, to);
            }
        }
        return i == from || digits >= 1L << 53 || scale > 22 ? slow(b, from, to)
                : (negative ? -1 : 1) * (digits / TEN[scale]);
    }

    private static double slow(byte[] b, int from, int to) {
        for (int i = from; i < to; i++) {
            int c = b[i];
            if ((c < '0' || c > '9') && c != '.' && c != '-' && c != '+' && c != 'e' && c != 'E') {
                return Double.NaN;
            }
        }
        try {
            double value = Double.parseDouble(new String(b, from, to - from, StandardCharsets.ISO_8859_1));
            return Double.isFinite(value) ? value : Double.NaN;
        } catch (NumberFormatException none) {
            return Double.NaN;
        }
    }

    /** A group code; {@link Integer#MIN_VALUE} when the bytes are none. */
    static int parseCode(byte[] b, int from, int to) {
        int i = from;
        boolean negative = i < to && b[i] == '-';
        if (negative) {
            i++;
        }
        if (i == to || to - i > 6) {
            return Integer.MIN_VALUE;
        }
        int value = 0;
        for (; i < to; i++) {
            if (b[i] < '0' || b[i] > '9') {
                return Integer.MIN_VALUE;
            }
            value = value * 10 + b[i] - '0';
        }
        return negative ? -value : value;
    }
}
