// SPDX-License-Identifier: EPL-2.0
package punchwright.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import punchwright.model.plan.Finding;
import punchwright.model.plan.Severity;

/** Findings as lines for the error stream: every error, and warnings and notes counted by code with one example. */
final class FindingLines {

    private FindingLines() {
    }

    static List<String> summary(List<Finding> findings) {
        List<String> lines = new ArrayList<>();
        findings.stream().filter(f -> f.getSeverity() == Severity.ERROR).map(FindingLines::line).distinct().forEach(lines::add);
        Map<String, List<Finding>> others = new LinkedHashMap<>();
        findings.stream().filter(f -> f.getSeverity() != Severity.ERROR)
                .forEach(f -> others.computeIfAbsent(f.getCode(), k -> new ArrayList<>()).add(f));
        others.values().forEach(same -> lines.add(line(same.get(0)) + (same.size() == 1 ? ""
                : " (and " + (same.size() - 1) + " more of this kind)")));
        return lines;
    }

    private static String line(Finding f) {
        String remedy = f.getRemedy() == null || f.getRemedy().isEmpty() ? "" : " " + f.getRemedy();
        return f.getSeverity().getName().toLowerCase(Locale.ROOT) + " " + f.getCode() + ": " + f.getSubject() + ": "
                + f.getMessage() + remedy;
    }
}
