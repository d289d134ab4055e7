// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import punchwright.engine.finding.Reason;
import punchwright.engine.finding.Severity;

/** What is noticed when features are recognised. Texts: findings.properties of this package. */
public enum FeatureReason implements Reason {
    /** Arguments: feature number, length mm, width mm, number of edges. */
    FREE_OPENING(Severity.NOTE),
    /** Arguments: feature number, size mm. */
    TINY_OPENING(Severity.WARNING);

    private final Severity severity;

    FeatureReason(Severity severity) {
        this.severity = severity;
    }

    @Override
    public Severity severity() {
        return severity;
    }
}
