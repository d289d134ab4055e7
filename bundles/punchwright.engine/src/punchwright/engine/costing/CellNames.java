// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import java.text.Normalizer;
import java.util.StringJoiner;
import java.util.regex.Pattern;

/**
 * Names of cost cells: letters, digits and underscore, beginning with a letter, at most 200 characters, and never something
 * that a spreadsheet reads as a cell address (AB12, R1C1) or a truth value. Rules: ISO/IEC 29500-1, 18.17.2.5 (names); 200
 * instead of 255 leaves room for prefixes.
 */
public final class CellNames {

    private static final Pattern FORM = Pattern.compile("[A-Za-z][A-Za-z0-9_]{0,199}");
    private static final Pattern ADDRESS = Pattern.compile("(?i)[A-Z]{1,3}[0-9]+|R[0-9]*C[0-9]*|R[0-9]*|C[0-9]*|TRUE|FALSE");

    private CellNames() {
    }

    /** The name itself, or an {@link IllegalArgumentException} that says what is wrong with it. */
    public static String check(String name) {
        if (name == null || !FORM.matcher(name).matches()) {
            throw new IllegalArgumentException("cost cell name '" + name
                    + "' must begin with a letter and hold only letters, digits and underscores, at most 200; rename it");
        }
        if (ADDRESS.matcher(name).matches()) {
            throw new IllegalArgumentException("cost cell name '" + name
                    + "' reads as a cell address or truth value in a spreadsheet; add a word, as " + name + "_value");
        }
        return name;
    }

    /** A name from parts, empty ones left out, joined by underscores; other characters become underscores. */
    public static String of(String... parts) {
        StringJoiner joined = new StringJoiner("_");
        for (String part : parts) {
            if (!part.isEmpty()) {
                joined.add(plain(part));
            }
        }
        return check(joined.toString());
    }

    private static String plain(String part) {
        String spelled = part.replace("ä", "ae").replace("ö", "oe").replace("ü", "ue").replace("ß", "ss");
        return Normalizer.normalize(spelled, Normalizer.Form.NFD).replaceAll("\\p{M}", "").replaceAll("[^A-Za-z0-9]+", "_");
    }
}
