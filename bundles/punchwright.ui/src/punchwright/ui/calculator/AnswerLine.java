// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.calculator;

/**
 * One line of an answer.
 *
 * @param text as read and copied
 * @param kind how it is shown
 */
record AnswerLine(String text, Kind kind) {

    /** What a line tells. */
    enum Kind {
        TITLE, RESULT, DETAIL, STEP, WARNING, NOTE, TROUBLE
    }
}
