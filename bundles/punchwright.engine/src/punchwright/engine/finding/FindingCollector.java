// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.finding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Point;

/**
 * Gathers findings about one subject in the order in which they come, with a bound on each reason so that a broken
 * input with a million defects stays readable and small. What is over the bound is counted.
 */
public final class FindingCollector {

    private final String subject;
    private final int mostPerReason;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<Reason, Integer> counts = new LinkedHashMap<>();

    /**
     * @param subject       object that every finding names
     * @param mostPerReason findings kept for one reason, at least 1
     */
    public FindingCollector(String subject, int mostPerReason) {
        this.subject = subject;
        this.mostPerReason = Math.max(1, mostPerReason);
    }

    public void add(Reason reason, Object... arguments) {
        addAt(null, reason, arguments);
    }

    /** Adds a finding with a place in mm; null for none. */
    public void addAt(Point place, Reason reason, Object... arguments) {
        if (isKept(reason)) {
            findings.add(new Finding(reason, subject, List.of(arguments), place));
        }
    }

    /** Adds a finding that was made elsewhere. */
    public void add(Finding finding) {
        if (isKept(finding.reason())) {
            findings.add(finding);
        }
    }

    private boolean isKept(Reason reason) {
        return counts.merge(reason, 1, Integer::sum) <= mostPerReason;
    }

    public String subject() {
        return subject;
    }

    /** How often the reason was given, kept or not. */
    public int count(Reason reason) {
        return counts.getOrDefault(reason, 0);
    }

    /** Reasons with more findings than were kept, with the number left out. */
    public Map<Reason, Integer> leftOut() {
        Map<Reason, Integer> over = new LinkedHashMap<>();
        counts.forEach((reason, n) -> {
            if (n > mostPerReason) {
                over.put(reason, n - mostPerReason);
            }
        });
        return over;
    }

    public List<Finding> findings() {
        return List.copyOf(findings);
    }
}
