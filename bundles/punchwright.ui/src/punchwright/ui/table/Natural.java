// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.table;

import java.util.Locale;

/** Order of words in which figures count as figures: "R 9" stands before "R 10". */
public final class Natural {

    private Natural() {
    }

    /** Compares as {@link java.util.Comparator} does, case first ignored. */
    public static int compare(String a, String b) {
        String left = a.toLowerCase(Locale.getDefault());
        String right = b.toLowerCase(Locale.getDefault());
        int i = 0;
        int j = 0;
        while (i < left.length() && j < right.length()) {
            if (Character.isDigit(left.charAt(i)) && Character.isDigit(right.charAt(j))) {
                int endLeft = endOfDigits(left, i);
                int endRight = endOfDigits(right, j);
                int byFigure = compareFigures(left.substring(i, endLeft), right.substring(j, endRight));
                if (byFigure != 0) {
                    return byFigure;
                }
                i = endLeft;
                j = endRight;
            } else if (left.charAt(i) != right.charAt(j)) {
                return Character.compare(left.charAt(i), right.charAt(j));
            } else {
                i++;
                j++;
            }
        }
        return Integer.compare(left.length() - i, right.length() - j);
    }

    private static int endOfDigits(String text, int from) {
        int end = from;
        while (end < text.length() && Character.isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private static int compareFigures(String a, String b) {
        String left = a.replaceFirst("^0+(?!$)", "");
        String right = b.replaceFirst("^0+(?!$)", "");
        return left.length() != right.length() ? Integer.compare(left.length(), right.length()) : left.compareTo(right);
    }
}
