// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.calculator;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.Severity;
import punchwright.engine.press.Answer;
import punchwright.engine.press.Figure;
import punchwright.engine.press.Input;
import punchwright.engine.press.Quantity;
import punchwright.ui.text.Texts;

/** An answer in words: results and findings at a glance, then values, formulas and sources that led to them. */
final class AnswerText {

    private final Locale locale;
    private final Map<Quantity, Quantity.Unit> units;

    /** @param units in which results are read, by quantity; others in the unit used inside */
    AnswerText(Locale locale, Map<Quantity, Quantity.Unit> units) {
        this.locale = locale;
        this.units = Map.copyOf(units);
    }

    List<AnswerLine> lines(Answer answer, String basis) {
        List<AnswerLine> lines = new ArrayList<>();
        lines.add(new AnswerLine(answer.question().title(locale) + ", " + basis, AnswerLine.Kind.TITLE));
        answer.results().forEach(f -> lines.add(new AnswerLine(value(f) + "  " + f.name(locale), AnswerLine.Kind.RESULT)));
        answer.findings().forEach(f -> lines.add(finding(f)));
        lines.add(new AnswerLine(Texts.of("calculator.from"), AnswerLine.Kind.TITLE));
        for (Map.Entry<Input, Double> e : answer.values().entrySet()) {
            lines.add(new AnswerLine(e.getKey().symbol() + " = " + Figures.text(e.getValue(), e.getKey().quantity(), units) + "  "
                    + e.getKey().label(locale), AnswerLine.Kind.STEP));
        }
        answer.figures().forEach(f -> made(f, lines));
        return lines;
    }

    private String value(Figure f) {
        return Figures.text(f.value(), f.quantity(), units);
    }

    private void made(Figure f, List<AnswerLine> lines) {
        String formula = f.formula().isEmpty() ? "" : " = " + f.formula().replace(" * ", " \u00b7 ");
        lines.add(new AnswerLine(f.symbol() + formula + " = " + value(f) + "  " + f.name(locale), AnswerLine.Kind.STEP));
        String standing = f.source().standing().in(locale);
        lines.add(new AnswerLine(f.source().citation().isEmpty() ? standing : f.source().citation() + " (" + standing + ")",
                AnswerLine.Kind.DETAIL));
    }

    private AnswerLine finding(Finding f) {
        boolean note = f.severity() == Severity.NOTE;
        String word = Texts.of(note ? "calculator.note" : "calculator.warning");
        return new AnswerLine(word + ": " + (f.message(locale) + " " + f.remedy(locale)).strip(),
                note ? AnswerLine.Kind.NOTE : AnswerLine.Kind.WARNING);
    }

    /** As text for the clipboard. */
    static String plain(List<AnswerLine> lines) {
        StringBuilder text = new StringBuilder();
        lines.forEach(l -> text.append(indent(l.kind())).append(l.text()).append(System.lineSeparator()));
        return text.toString();
    }

    private static String indent(AnswerLine.Kind kind) {
        return switch (kind) {
            case DETAIL -> "        ";
            case RESULT, STEP, NOTE, WARNING -> "    ";
            default -> "";
        };
    }
}
