// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import punchwright.engine.nesting.boxes.FreeSpace;

/** Which free rectangle a box goes into; the least score wins, ties go to the least x and then the least y. */
enum FitRule {
    /** Least remainder on the tighter side. */
    SHORT_SIDE {
        @Override
        long score(FreeSpace free, int i, int length, int width) {
            return Math.min(free.length(i) - length, free.width(i) - width);
        }
    },
    /** Least remainder on the looser side. */
    LONG_SIDE {
        @Override
        long score(FreeSpace free, int i, int length, int width) {
            return Math.max(free.length(i) - length, free.width(i) - width);
        }
    },
    /** Smallest free rectangle. */
    AREA {
        @Override
        long score(FreeSpace free, int i, int length, int width) {
            return (long) free.length(i) * free.width(i);
        }
    },
    /** As far left as it goes: keeps the right end of the sheet free. */
    LEFT {
        @Override
        long score(FreeSpace free, int i, int length, int width) {
            return free.x(i) + (long) length;
        }
    },
    /** As low as it goes. */
    BOTTOM {
        @Override
        long score(FreeSpace free, int i, int length, int width) {
            return free.y(i) + (long) width;
        }
    };

    abstract long score(FreeSpace free, int i, int length, int width);
}
