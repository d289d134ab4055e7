// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.Finding;

/** A sheet of paper on which one question is worked: values in, figures and findings out. */
final class Working {

    private final Basis basis;
    private final Map<Input, Double> values;
    private final List<Figure> figures = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private final String question;

    Working(String question, Basis basis, Map<Input, Double> values) {
        this.question = question;
        this.basis = basis;
        this.values = values;
    }

    MaterialGroup group() {
        return basis.group();
    }

    Basis basis() {
        return basis;
    }

    String question() {
        return question;
    }

    double in(Input input) {
        return values.get(input);
    }

    boolean yes(Input input) {
        return in(input) >= 0.5;
    }

    /** A figure on the way; returns its value. */
    double step(String key, String symbol, Quantity quantity, double value, String formula, Source source) {
        return add(key, symbol, quantity, value, formula, source, true);
    }

    /** A figure asked for; returns its value. */
    double result(String key, String symbol, Quantity quantity, double value, String formula, Source source) {
        return add(key, symbol, quantity, value, formula, source, false);
    }

    private double add(String key, String symbol, Quantity quantity, double value, String formula, Source source, boolean step) {
        if (!Double.isFinite(value)) {
            throw QuestionException.of(PressReason.NO_RESULT, question + ", " + key, symbol);
        }
        figures.add(new Figure(key, symbol, value, quantity, formula, source, step));
        return value;
    }

    void find(List<Finding> more) {
        findings.addAll(more);
    }

    void find(PressReason reason, Object... arguments) {
        findings.add(Finding.of(reason, question, arguments));
    }

    List<Figure> figures() {
        return figures;
    }

    List<Finding> findings() {
        return findings;
    }
}
