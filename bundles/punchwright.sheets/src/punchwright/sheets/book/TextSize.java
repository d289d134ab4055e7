// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.book;

/**
 * How much room a text takes in a sans-serif typeface, in widths of a digit, as column widths are given: without fonts, so
 * that it is the same on every machine. Letter classes after the usual proportions of such typefaces (common practice, no
 * source).
 */
final class TextSize {

    private static final String NARROW = "ijl.,:;'|!/\\tfI()[] -";
    private static final String WIDE = "mwMW@%";
    private static final double BOLD = 1.08;

    private TextSize() {
    }

    /** Width of a text in digits. */
    static double width(String text, boolean bold) {
        double width = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (NARROW.indexOf(c) >= 0) {
                width += 0.58;
            } else if (WIDE.indexOf(c) >= 0) {
                width += 1.5;
            } else {
                width += Character.isUpperCase(c) ? 1.25 : 1;
            }
        }
        return bold ? width * BOLD : width;
    }

    /** Lines that a text takes when it is broken at blanks and hyphens, and within words that are too long. */
    static int lines(String text, double digits, boolean bold) {
        int lines = 0;
        for (String paragraph : text.split("\n", -1)) {
            lines++;
            double used = 0;
            for (String word : paragraph.split("(?<=[ -])")) {
                double width = width(word, bold);
                double bare = width(word.stripTrailing(), bold);
                if (used > 0 && used + bare > digits) {
                    lines++;
                    used = 0;
                }
                lines += (int) (bare / digits);
                used = used + width > digits && bare > digits ? width % digits : used + width;
            }
        }
        return lines;
    }
}
