// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

/** What a run of hits does to the sheet, as far as the order cares. */
public enum WorkKind {
    /** Cuts inside a part. */
    OPENING,
    /** Slits or nibbles an outer edge so near to a form that it must be cut before the form stands. */
    SLIT_NEAR_FORM,
    /** Forms or marks. */
    FORM,
    /** Slits or nibbles an outer edge: what is left of the part's hold is its micro-joints. */
    SEPARATING
}
