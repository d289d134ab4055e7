// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

/** To which side of the sheet a form goes, seen as the part is drawn. */
public enum FormDirection {
    /** Not a form, or a form whose side its tool decides. */
    NONE, UP, DOWN
}
