// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why a cost is to be read with care. */
public enum CostReason implements Reason {
    MACHINE_RATE(Severity.ERROR),
    SHEET_PRICE(Severity.WARNING),
    TOOL_LIFE(Severity.WARNING),
    LABOUR_RATE(Severity.WARNING),
    TIME_SHARE(Severity.NOTE),
    SPARE_PIECES(Severity.NOTE);

    private final Severity severity;

    CostReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
