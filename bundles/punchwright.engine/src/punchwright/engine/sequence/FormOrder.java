// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import punchwright.engine.press.FormingRules;

/** What a precedence rule compares of two groups of forms, besides their kind of work and their tools. */
public enum FormOrder {
    /** Nothing: kinds and tools alone decide. */
    ANY {
        @Override
        boolean puts(ToolGroup first, ToolGroup later) {
            return true;
        }
    },
    /** A form that may be made beside the other one comes after it where the other may not be made beside it. */
    KEEPS_CLEAR {
        @Override
        boolean puts(ToolGroup first, ToolGroup later) {
            return first.level() < later.level();
        }
    },
    /** Forms upward before forms downward, which drag on table and dies. */
    UP_FIRST {
        @Override
        boolean puts(ToolGroup first, ToolGroup later) {
            return first.level() == later.level() && sameWay(first, later) != 0
                    && FormingRules.compare(first.standsMm(), later.standsMm()) < 0;
        }
    },
    /** Of forms to one side the lower before the higher. */
    LOW_FIRST {
        @Override
        boolean puts(ToolGroup first, ToolGroup later) {
            return first.level() == later.level() && sameWay(first, later) == 0
                    && FormingRules.compare(first.standsMm(), later.standsMm()) < 0;
        }
    };

    abstract boolean puts(ToolGroup first, ToolGroup later);

    private static int sameWay(ToolGroup a, ToolGroup b) {
        return Boolean.compare(a.standsMm() < 0, b.standsMm() < 0);
    }
}
