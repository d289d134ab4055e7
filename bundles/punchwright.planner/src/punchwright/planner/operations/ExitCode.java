// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

/** How an operation ended, and what the headless application returns. */
public enum ExitCode {
    /** Everything asked for was done. */
    GOOD(0),
    /** It was done, and there are errors among the findings. */
    FINDINGS(1),
    /** The arguments make no sense; nothing was done. */
    USAGE(2),
    /** A file or record is missing, unreadable or cannot be written; nothing was damaged. */
    INPUT(3),
    /** A fault of the program. */
    INTERNAL(4);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    public int number() {
        return number;
    }

    /** The graver of two. */
    public ExitCode and(ExitCode other) {
        return number >= other.number ? this : other;
    }
}
