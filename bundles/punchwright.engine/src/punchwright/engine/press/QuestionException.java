// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import punchwright.engine.finding.Finding;

/** A question that has no answer for its values; the finding says which and what would do, in both languages. */
public final class QuestionException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;

    private final transient Finding finding;

    QuestionException(Finding finding) {
        super(finding.subject() + ": " + (finding.message() + " " + finding.remedy()).strip());
        this.finding = finding;
    }

    /** A question refused for a reason. */
    static QuestionException of(PressReason reason, String question, Object... arguments) {
        return new QuestionException(Finding.of(reason, question, arguments));
    }

    public Finding finding() {
        return finding;
    }
}
