// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.layout;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

import punchwright.engine.nesting.check.LayoutReason;
import punchwright.planner.layouts.PieceProblem;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** What is wrong with pieces, in a word with its value and in a sentence. */
final class ProblemWords {

    private ProblemWords() {
    }

    /** A word, with the value where there is one: "web 3.2 mm, needs 5". */
    static String brief(PieceProblem p) {
        if (p.reason() == LayoutReason.WEB) {
            List<Object> a = p.finding().arguments();
            return Texts.of("layouts.web.small", Numbers.fixed((Double) a.get(2), 1), Numbers.plain((Double) a.get(3)));
        }
        return word(p);
    }

    /** The kind of problem in a word. */
    static String word(PieceProblem p) {
        return Texts.of("layouts.problem." + p.reason().name().toLowerCase(Locale.ROOT).replace('_', '.'));
    }

    /** The pieces concerned by number. */
    static String pieces(PieceProblem p) {
        return p.pieces().stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
