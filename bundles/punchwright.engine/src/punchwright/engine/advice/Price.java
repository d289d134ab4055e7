// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

/**
 * What an addition costs.
 *
 * @param value currency of the library
 * @param basis where it comes from
 * @param how   in a short sentence, with the figures it was made from
 */
public record Price(double value, Basis basis, String how) {

    /** Where a price comes from. */
    public enum Basis {
        /** Least squares over the tools owned of the same family. */
        FITTED,
        /** A table of common practice, no source. */
        TABLE,
        /** Given by the engineer. */
        GIVEN
    }
}
