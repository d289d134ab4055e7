// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import punchwright.engine.press.Answer;
import punchwright.engine.press.Calculation;
import punchwright.engine.press.ClearanceRule;
import punchwright.engine.press.Figure;
import punchwright.engine.press.Input;
import punchwright.engine.press.MaterialGroup;
import punchwright.engine.press.Quantity;

/** Answers and help of questions as lines for a terminal, in English. */
final class CalcText {

    private static final Locale LOCALE = Locale.ENGLISH;

    private CalcText() {
    }

    /** A constant as a word on a command line. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** At most six figures that count, without trailing zeros, with its unit. */
    static String number(double value, Quantity quantity) {
        return (plain(value) + " " + quantity.sign()).strip();
    }

    static String plain(double value) {
        if (value == 0) {
            return "0";
        }
        return new java.math.BigDecimal(value).round(new java.math.MathContext(6)).stripTrailingZeros().toPlainString();
    }

    /** Results first, then what led to them: inputs and steps. */
    static List<String> lines(Answer answer) {
        List<String> lines = new ArrayList<>();
        lines.add(answer.question().title(LOCALE) + " (" + basis(answer) + ")");
        answer.results().forEach(f -> lines.add(figure(f)));
        lines.add("from");
        for (Map.Entry<Input, Double> e : answer.values().entrySet()) {
            lines.add(String.format(LOCALE, "  %-5s = %-16s %s", e.getKey().symbol(), number(e.getValue(), e.getKey().quantity()),
                    e.getKey().label(LOCALE)));
        }
        answer.figures().stream().filter(Figure::step).forEach(f -> lines.add(figure(f)));
        return lines;
    }

    private static String basis(Answer answer) {
        return answer.basis().material() == null ? "group " + word(answer.basis().group())
                : "material " + answer.basis().material().id() + ", " + answer.basis().material().grade();
    }

    private static String figure(Figure f) {
        String formula = f.formula().isEmpty() ? "" : "; " + f.symbol() + " = " + f.formula();
        String source = (f.source().citation() + " (" + f.source().standing().in(LOCALE) + ")").strip();
        return String.format(LOCALE, "  %-5s = %-16s %s%s; %s", f.symbol(), number(f.value(), f.quantity()), f.name(LOCALE),
                formula,
                source);
    }

    /** Each question with its inputs, units and ranges. */
    static String help(List<Calculation> questions) {
        StringBuilder text = new StringBuilder();
        for (Calculation c : questions) {
            text.append(String.format(LOCALE, "%n  %s: %s%n", c.word(), c.title(LOCALE)));
            c.inputs().forEach(i -> text.append(String.format(LOCALE, "    --%-13s %-34s %s%n", i.name(), range(i),
                    i.label(LOCALE))));
        }
        text.append("\n  --group is one of ").append(words(MaterialGroup.values())).append("; mild-steel unless given.\n");
        text.append("  --rule is one of ").append(words(ClearanceRule.values())).append("; the material's unless given.\n");
        text.append("  A unit may follow a number: ").append(Arrays.stream(Quantity.values()).filter(q -> q.units().size() > 1)
                .map(q -> q.units().stream().map(Quantity.Unit::sign).collect(Collectors.joining(" or ")))
                .collect(Collectors.joining(", "))).append(".\n");
        text.append("  --machine and --place take the force limit from the workspace.\n");
        text.append("  Warnings, for instance a value outside its range, end with exit code 1; notes do not.\n");
        return text.toString();
    }

    private static String range(Input i) {
        String usual = !i.required() ? ", " + plain(i.usual()) + " unless given"
                : i.from() == Input.From.NOWHERE ? ", needed" : ", or from the material";
        return (plain(i.least()) + " to " + plain(i.largest()) + " " + i.quantity().sign()).strip() + usual;
    }

    private static String words(Enum<?>[] constants) {
        return Arrays.stream(constants).map(CalcText::word).collect(Collectors.joining(", "));
    }
}
