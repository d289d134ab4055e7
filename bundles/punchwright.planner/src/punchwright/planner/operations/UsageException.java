// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

/** The words of a call make no sense; the message says which and what would. */
public final class UsageException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public UsageException(String message) {
        super(message);
    }
}
