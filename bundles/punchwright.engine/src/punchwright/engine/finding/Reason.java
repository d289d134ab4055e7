// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.finding;

/**
 * A typed reason. Each stage has one enum that implements this; the enum's package holds the texts in
 * {@code findings.properties} (English) and {@code findings_de.properties} (German) with the keys
 * {@code CODE.message} and {@code CODE.remedy}, both {@link java.text.MessageFormat} patterns over the same arguments.
 */
public interface Reason {

    /** Stable code, for example {@code TOOLING-FORCE}; never reused for another meaning. */
    String code();

    /** How grave it is. */
    Severity severity();
}
