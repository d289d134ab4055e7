// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.Locale;

/** How far a formula or table may be trusted. */
public enum Standing {
    /** Read in the source named. */
    PUBLISHED,
    /** The source is named from memory and was not looked up again. */
    FROM_MEMORY,
    /** Follows from geometry, mechanics or arithmetic alone. */
    DERIVED,
    /** Common practice of the trade without a source; to be replaced by the shop's own figures. */
    PRACTICE,
    /** Kept in the shop's own records. */
    RECORD;

    /** In words. */
    public String in(Locale locale) {
        return Words.of("standing." + name(), locale);
    }
}
