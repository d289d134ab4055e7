// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

/** How much a part is wanted. */
public enum Want {
    /** All pieces, or a finding that says how many are missing. */
    MUST,
    /** Up to the quantity, as long as the value of the pieces is more than what they add to the cost of the order. */
    MAY,
    /** Up to the quantity, only into room that the sheets taken for the other parts leave anyway. */
    FILLER
}
