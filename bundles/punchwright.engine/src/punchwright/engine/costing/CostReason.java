// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.costing;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** Why a cost is to be read with care. */
public enum CostReason implements Reason {
    MACHINE_RATE("COST-MACHINE-RATE", Severity.ERROR),
    SHEET_PRICE("COST-SHEET-PRICE", Severity.WARNING),
    TOOL_LIFE("COST-TOOL-LIFE", Severity.WARNING),
    LABOUR_RATE("COST-LABOUR-RATE", Severity.WARNING),
    TIME_SHARE("COST-TIME-SHARE", Severity.NOTE),
    OVERPRODUCTION("COST-SPARE-PIECES", Severity.NOTE);

    private final String code;
    private final Severity severity;

    CostReason(String code, Severity severity) {
        this.code = code;
        this.severity = severity;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
