// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import punchwright.engine.tooling.ToolUse;

/** How one tool gives way to the next under the ram. */
public enum ChangeKind {
    /** The same tool goes on. */
    NONE,
    /** The next insert of the same multi-tool holder. */
    INSERT,
    /** From place to place by the machine. */
    AUTOMATIC,
    /** By hand, since one of the two has no place. */
    HAND;

    /** What it takes to go from one tool to the other; the same both ways. */
    public static ChangeKind between(ToolUse from, ToolUse to) {
        if (from == to || from.number() == to.number()) {
            return NONE;
        }
        if (from.holder() != null && from.holder().equals(to.holder()) && samePlace(from, to)) {
            return INSERT;
        }
        return from.place() == null || to.place() == null ? HAND : AUTOMATIC;
    }

    private static boolean samePlace(ToolUse from, ToolUse to) {
        return from.place() == null ? to.place() == null : from.place().equals(to.place());
    }
}
