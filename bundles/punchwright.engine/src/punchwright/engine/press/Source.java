// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

/**
 * Where a formula, table or value comes from.
 *
 * @param citation author, work and section, or the standard with its table; empty for common practice
 * @param standing how far it may be trusted
 */
public record Source(String citation, Standing standing) {

    static Source read(String citation) {
        return new Source(citation, Standing.PUBLISHED);
    }

    static Source memory(String citation) {
        return new Source(citation, Standing.FROM_MEMORY);
    }

    static Source derived(String what) {
        return new Source(what, Standing.DERIVED);
    }
}
