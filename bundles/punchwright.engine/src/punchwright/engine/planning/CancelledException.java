// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

/** The person cancelled; nothing was changed. */
public final class CancelledException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public CancelledException() {
        super("cancelled");
    }
}
