// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

/** Which turn of a piece is taken when each has its own place; the least score wins, then the lower place. */
public enum TurnRule {
    /** Ends farthest left: keeps the right end of the sheet free. */
    RIGHT_END {
        @Override
        double score(Outline o, double x, double y) {
            return x + o.maxX;
        }
    },
    /** Middle farthest left: fills hollows. */
    MIDDLE {
        @Override
        double score(Outline o, double x, double y) {
            return x + (o.minX + o.maxX) / 2;
        }
    },
    /** Begins farthest left. */
    LEFT_END {
        @Override
        double score(Outline o, double x, double y) {
            return x + o.minX + 1e-3 * o.length();
        }
    },
    /** Middle nearest to the lower left corner, the height counted half. */
    CORNER {
        @Override
        double score(Outline o, double x, double y) {
            return x + o.maxX + 0.5 * (y + o.maxY);
        }
    };

    abstract double score(Outline o, double x, double y);
}
