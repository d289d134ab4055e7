// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

/**
 * What a tool's record says of the room around its hit, and of forming.
 *
 * @param keepClearMm   distance from the form's edge in which nothing may be hit afterwards, mm; 0: by rule
 * @param bodyMm        diameter of punch, stripper and die about the axis, mm; 0: not given
 * @param dieRadiusMm   radius of the die's edge over which a collar is drawn, mm; 0: the usual one
 * @param hitsPerForm   hits that one form takes in one place; 0: by rule
 */
public record ToolRoom(double keepClearMm, double bodyMm, double dieRadiusMm, int hitsPerForm) {

    /** Nothing given: the rules of the press stand for it. */
    public static final ToolRoom NONE = new ToolRoom(0, 0, 0, 0);
}
