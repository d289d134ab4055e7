// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Smallest total number of bins published for the ten instances of each class and size of the two-dimensional bin packing sets of
 * Berkey and Wang (classes 1 to 6) and of Martello and Vigo (7 to 10): the least over Goncalves and Resende, International
 * Journal of Production Economics 145 (2013); Parreno and others, Annals of Operations Research 179 (2010); Blum and Schmid,
 * Procedia Computer Science 18 (2013); Beyaz and others, Applied Soft Computing 36 (2015); Cid-Garcia and
 * Rios-Solis, PLOS ONE 15 (2020).
 * Taken from a collection of these figures, not checked against the papers.
 */
final class Published {

    /** Rows: classes 1 to 10; columns: 20, 40, 60, 80, 100 boxes. */
    private static final int[][] FIXED = {{71, 134, 200, 275, 317}, {10, 19, 25, 31, 39}, {51, 94, 139, 189, 223},
        {10, 19, 23, 31, 37}, {65, 119, 180, 247, 281}, {10, 16, 21, 30, 32}, {55, 111, 158, 232, 271},
        {58, 113, 161, 224, 277}, {143, 278, 437, 577, 695}, {42, 74, 100, 128, 158}};
    private static final int[][] TURNED = {{66, 128, 195, 270, 313}, {10, 19, 25, 31, 39}, {47, 92, 134, 182, 220},
        {10, 19, 23, 31, 37}, {59, 114, 172, 239, 277}, {10, 16, 21, 30, 32}, {52, 102, 146, 208, 250},
        {53, 103, 147, 204, 252}, {143, 275, 435, 573, 693}, {41, 72, 99, 125, 154}};
    private static final Pattern NAME = Pattern.compile("cl(?:ass)?_?0?(\\d+)_0*(\\d+)_\\d+");

    private Published() {
    }

    /** The group of ten an instance belongs to, such as {@code class 3, 40}, or null. */
    static String group(String name) {
        Matcher m = NAME.matcher(name.toLowerCase(Locale.ROOT));
        return m.matches() && total(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)), false) > 0
                ? "class " + Integer.parseInt(m.group(1)) + ", " + Integer.parseInt(m.group(2)) : null;
    }

    /** The best total of a group of ten, or NaN. */
    static double total(String group, boolean turn) {
        Matcher m = Pattern.compile("class (\\d+), (\\d+)").matcher(group);
        double t = m.matches() ? total(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2)), turn) : 0;
        return t > 0 ? t : Double.NaN;
    }

    private static int total(int kind, int boxes, boolean turn) {
        boolean known = kind >= 1 && kind <= 10 && boxes >= 20 && boxes <= 100 && boxes % 20 == 0;
        return known ? (turn ? TURNED : FIXED)[kind - 1][boxes / 20 - 1] : 0;
    }
}
