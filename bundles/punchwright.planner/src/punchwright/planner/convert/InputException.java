// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import punchwright.engine.finding.Finding;

/** Input that cannot be used; carries the one finding that says why and the way out. */
public final class InputException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private final transient Finding finding;

    public InputException(Finding finding) {
        super(finding.message());
        this.finding = finding;
    }

    public Finding finding() {
        return finding;
    }
}
