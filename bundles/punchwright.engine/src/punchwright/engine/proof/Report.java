// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;

/** Collects findings, the first few of each reason. */
final class Report {

    private static final int OF_EACH = 10;

    private final List<Finding> findings = new ArrayList<>();
    private final Map<ProofReason, Integer> counts = new EnumMap<>(ProofReason.class);
    private boolean failed;

    void add(ProofReason reason, Point place, String subject, Object... arguments) {
        if (counts.merge(reason, 1, Integer::sum) <= OF_EACH) {
            Finding finding = new Finding(reason, subject, List.of(arguments), place);
            failed |= finding.isError();
            findings.add(finding);
        }
    }

    boolean failed() {
        return failed;
    }

    List<Finding> findings() {
        return findings;
    }
}
