// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import punchwright.model.plan.Finding;
import punchwright.model.plan.Plan;

/**
 * What an operation gave.
 *
 * @param code     how it ended
 * @param lines    what to print, in order
 * @param findings everything noticed
 * @param files    what was written
 * @param plans    plans made
 * @param records  what {@code --json} prints, one object a line: texts, numbers, truth values, lists and maps of these by name
 */
public record Outcome(ExitCode code, List<String> lines, List<Finding> findings, List<Path> files, List<Plan> plans,
        List<Map<String, Object>> records) {

    public Outcome {
        lines = List.copyOf(lines);
        findings = List.copyOf(findings);
        files = List.copyOf(files);
        plans = List.copyOf(plans);
        records = List.copyOf(records);
    }

    /** An outcome without records. */
    public Outcome(ExitCode code, List<String> lines, List<Finding> findings, List<Path> files, List<Plan> plans) {
        this(code, lines, findings, files, plans, List.of());
    }
}
