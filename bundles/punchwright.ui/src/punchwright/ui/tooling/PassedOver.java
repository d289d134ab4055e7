// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import punchwright.engine.finding.Finding;
import punchwright.planner.plans.PartWeighing;
import punchwright.ui.text.Texts;

/**
 * A tool that takes no part in the chosen way.
 *
 * @param tool   its name; of the feature itself, where nothing makes it, words for that
 * @param rank   0 refused, 1 warning, 2 could have been taken
 * @param code   typed reason
 * @param reason with values
 * @param remedy the way out
 */
public record PassedOver(String tool, int rank, String code, String reason, String remedy) {

    /** What no tool makes has its own reason in front. */
    static List<PassedOver> of(FeatureLine line, PartWeighing weighing) {
        List<PassedOver> rows = new ArrayList<>();
        weighing.reasons(line.ways().get(0)).forEach(f -> rows.add(of(f, Texts.of("operations.passed.self"))));
        line.ways().get(0).passedOver().forEach(f -> rows.add(of(f, f.subject())));
        return rows;
    }

    private static PassedOver of(Finding f, String tool) {
        Locale locale = Locale.getDefault();
        return new PassedOver(tool, OperationColumns.rank(f), f.code(), f.message(locale), f.remedy(locale));
    }
}
