// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

/** What the lines of a layer stand for. */
public enum LayerMeaning {
    /** Edges of the part. */
    CUT,
    /** Marked on the face, not cut. */
    MARK,
    /** Place of a form that rises above the sheet. */
    FORM_UP,
    /** Place of a form that goes below the sheet. */
    FORM_DOWN,
    /** Where the part is bent later. */
    BEND_LINE,
    /** Not made. */
    IGNORE
}
