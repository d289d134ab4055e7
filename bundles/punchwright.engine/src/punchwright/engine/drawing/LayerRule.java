// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.Locale;
import java.util.Objects;

/**
 * Gives a meaning to lines by the name of their layer, their line type or their colour; all stated criteria must fit.
 *
 * @param layerPattern    name with * for any text and ? for any character, case does not count; "*" for every layer
 * @param lineTypePattern the same for the line type
 * @param colour          colour number 1 to 255 as seen; 0 for every colour
 * @param meaning         what they stand for
 */
public record LayerRule(String layerPattern, String lineTypePattern, int colour, LayerMeaning meaning) {

    public LayerRule {
        Objects.requireNonNull(meaning, "meaning");
        if (colour < 0 || colour > 255) {
            throw new IllegalArgumentException("colour " + colour + " is not within 0 to 255");
        }
    }

    public static LayerRule forLayer(String pattern, LayerMeaning meaning) {
        return new LayerRule(pattern, "*", 0, meaning);
    }

    public static LayerRule forLineType(String pattern, LayerMeaning meaning) {
        return new LayerRule("*", pattern, 0, meaning);
    }

    public static LayerRule forColour(int colour, LayerMeaning meaning) {
        return new LayerRule("*", "*", colour, meaning);
    }

    boolean fits(String layer, String lineType, int seenColour) {
        return (colour == 0 || colour == seenColour) && like(layerPattern, layer) && like(lineTypePattern, lineType);
    }

    /** Matches with * and ?, without backtracking deeper than the last star. */
    static boolean like(String pattern, String name) {
        String p = pattern.toUpperCase(Locale.ROOT);
        String s = name.toUpperCase(Locale.ROOT);
        int i = 0;
        int k = 0;
        int star = -1;
        int mark = 0;
        while (i < s.length()) {
            if (k < p.length() && p.charAt(k) == '*') {
                star = k++;
                mark = i;
            } else if (k < p.length() && (p.charAt(k) == '?' || p.charAt(k) == s.charAt(i))) {
                k++;
                i++;
            } else if (star >= 0) {
                k = star + 1;
                i = ++mark;
            } else {
                return false;
            }
        }
        while (k < p.length() && p.charAt(k) == '*') {
            k++;
        }
        return k == p.length();
    }
}
