// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.finding;

import java.util.Locale;

/**
 * A typed reason. Each stage has one enum that implements this; the enum's package holds the texts in
 * {@code findings.properties} (English) and {@code findings_de.properties} (German) with the keys
 * {@code CODE.message} and {@code CODE.remedy}, both {@link java.text.MessageFormat} patterns over the same arguments.
 */
public interface Reason {

    /** Name of the constant; given by the enum. */
    String name();

    /**
     * Stable code, never reused for another meaning: what stands before "Reason" in the enum's name, then the constant's name, so
     * {@code ToolingReason.FORCE} is {@code TOOLING-FORCE}.
     */
    default String code() {
        String stage = getClass().getSimpleName().replaceFirst("Reason$", "").toUpperCase(Locale.ROOT);
        return stage + "-" + name().replace('_', '-');
    }

    /** How grave it is. */
    Severity severity();
}
