// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import punchwright.engine.finding.Finding;
import punchwright.engine.press.Answer;
import punchwright.engine.press.Figure;
import punchwright.engine.press.Input;

/**
 * An answer as one object for {@code --json}: {@code question}, {@code group}, {@code rule}, {@code material} (id, empty
 * without one), {@code inputs} and {@code figures} by name, {@code findings}. Values are in the unit named beside them.
 */
final class CalcRecord {

    private static final Locale LOCALE = Locale.ENGLISH;

    private CalcRecord() {
    }

    static Map<String, Object> of(Answer answer, Set<String> given) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("question", answer.question().word());
        record.put("group", CalcText.word(answer.basis().group()));
        record.put("rule", CalcText.word(answer.basis().rule()));
        record.put("material", answer.basis().material() == null ? "" : answer.basis().material().id());
        Map<String, Object> inputs = new LinkedHashMap<>();
        answer.values().forEach((i, v) -> inputs.put(i.name(), input(i, v, given.contains(i.name()))));
        record.put("inputs", inputs);
        Map<String, Object> figures = new LinkedHashMap<>();
        answer.figures().forEach(f -> figures.put(f.key(), figure(f)));
        record.put("figures", figures);
        record.put("findings", findings(answer.findings()));
        return record;
    }

    private static Map<String, Object> input(Input i, double value, boolean given) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("symbol", i.symbol());
        record.put("label", i.label(LOCALE));
        record.put("value", value);
        record.put("unit", i.quantity().sign());
        record.put("least", i.least());
        record.put("largest", i.largest());
        record.put("given", given);
        return record;
    }

    private static Map<String, Object> figure(Figure f) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("symbol", f.symbol());
        record.put("name", f.name(LOCALE));
        record.put("value", f.value());
        record.put("unit", f.quantity().sign());
        record.put("formula", f.formula());
        record.put("source", f.source().citation());
        record.put("standing", CalcText.word(f.source().standing()));
        record.put("step", f.step());
        return record;
    }

    private static List<Map<String, Object>> findings(List<Finding> findings) {
        return findings.stream().map(f -> {
            Map<String, Object> record = new LinkedHashMap<>();
            record.put("code", f.code());
            record.put("severity", CalcText.word(f.severity()));
            record.put("message", f.message());
            record.put("remedy", f.remedy());
            return record;
        }).toList();
    }
}
