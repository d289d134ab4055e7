// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.drawing;

import org.eclipse.swt.graphics.Image;

import punchwright.engine.finding.Finding;
import punchwright.ui.text.Texts;
import punchwright.ui.theme.Icons;

/** How findings of the engine are shown: rank, word and sign. */
final class Severities {

    private static final Icons[] SIGNS = { Icons.ERROR, Icons.WARNING, Icons.NOTE };

    private Severities() {
    }

    /** 0 error, 1 warning, 2 note. */
    static int rank(Finding finding) {
        return switch (finding.severity()) {
            case ERROR -> 0;
            case WARNING -> 1;
            case NOTE -> 2;
        };
    }

    static String word(Finding finding) {
        return Texts.of("severity." + rank(finding));
    }

    static Image sign(Finding finding) {
        return SIGNS[rank(finding)].image();
    }
}
