// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.List;
import java.util.Locale;

import punchwright.engine.finding.Finding;

/**
 * A tool that takes no part in the chosen way.
 *
 * @param tool   its name
 * @param rank   0 refused, 1 warning, 2 could have been taken
 * @param code   typed reason
 * @param reason with values
 * @param remedy the way out
 */
public record PassedOver(String tool, int rank, String code, String reason, String remedy) {

    static List<PassedOver> of(FeatureLine line) {
        return line.ways().get(0).passedOver().stream().map(PassedOver::of).toList();
    }

    private static PassedOver of(Finding f) {
        Locale locale = Locale.getDefault();
        return new PassedOver(f.subject(), OperationColumns.rank(f), f.code(), f.message(locale), f.remedy(locale));
    }
}
