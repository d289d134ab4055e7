// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/** What a hit is for. */
public enum HitRole {
    /** Makes an opening alone or with few others. */
    PIERCE,
    /** One of many overlapping hits along a path. */
    NIBBLE,
    /** Cuts along a straight edge of the outer contour. */
    SLIT,
    /** Forms or marks. */
    FORM
}
