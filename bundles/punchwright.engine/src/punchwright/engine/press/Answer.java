// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.Severity;

/**
 * The answer to a question with all that led to it.
 *
 * @param question which question
 * @param basis    what was known of the sheet
 * @param values   every input with its value in the unit used inside, in the question's order
 * @param figures  in the order of working; results first to the eye are those that are no {@link Figure#step}
 * @param findings warnings and notes
 */
public record Answer(Calculation question, Basis basis, Map<Input, Double> values, List<Figure> figures, List<Finding> findings) {

    public Answer {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }

    /** The figures asked for, without those on the way. */
    public List<Figure> results() {
        return figures.stream().filter(f -> !f.step()).toList();
    }

    /** Whether something stands against the numbers: a warning or an error, not a note. */
    public boolean warned() {
        return findings.stream().anyMatch(f -> f.severity() != Severity.NOTE);
    }

    /** The figure of a key. */
    public Figure figure(String key) {
        return figures.stream().filter(f -> f.key().equals(key)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no figure " + key));
    }
}
