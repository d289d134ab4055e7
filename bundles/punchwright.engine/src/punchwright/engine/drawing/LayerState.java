// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

/** Whether a curve is seen when the drawing is opened. */
public enum LayerState {
    /** Seen. */
    SHOWN,
    /** Its layer is switched off, perhaps frozen as well. */
    OFF,
    /** Its layer is frozen. */
    FROZEN,
    /** The entity itself is set invisible. */
    INVISIBLE
}
