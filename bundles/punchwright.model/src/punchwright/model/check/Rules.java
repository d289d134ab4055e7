// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

import org.eclipse.emf.ecore.EObject;

import punchwright.model.plan.Severity;

/** The table of all rules, by code. */
public final class Rules {

    private static final List<Rule<?>> ALL = all();

    private Rules() {
    }

    /** Collects the rows of one group. */
    static final class Rows {

        private final List<Rule<?>> rules = new ArrayList<>();

        <T extends EObject> void error(String code, Class<T> type, Rule.Check<T> check) {
            rules.add(new Rule<>(code, Severity.ERROR, type, check));
        }

        <T extends EObject> void warning(String code, Class<T> type, Rule.Check<T> check) {
            rules.add(new Rule<>(code, Severity.WARNING, type, check));
        }

        <T extends EObject> void note(String code, Class<T> type, Rule.Check<T> check) {
            rules.add(new Rule<>(code, Severity.NOTE, type, check));
        }
    }

    private static List<Rule<?>> all() {
        Rows rows = new Rows();
        GeneralRules.addTo(rows);
        LibraryRules.addTo(rows);
        LayerRuleRules.addTo(rows);
        OrderRuleRules.addTo(rows);
        MachineRules.addTo(rows);
        StandingRules.addTo(rows);
        ToolRules.addTo(rows);
        ToolLifeRules.addTo(rows);
        MaterialRules.addTo(rows);
        PartRules.addTo(rows);
        ShapeRules.addTo(rows);
        OrderRules.addTo(rows);
        KeptLayoutRules.addTo(rows);
        PlanRules.addTo(rows);
        CostRules.addTo(rows);
        List<Rule<?>> rules = rows.rules;
        rules.sort(Comparator.comparing(Rule::code));
        Set<String> codes = new TreeSet<>();
        for (Rule<?> rule : rules) {
            if (!codes.add(rule.code())) {
                throw new IllegalStateException("Two rules have the code " + rule.code());
            }
        }
        return List.copyOf(rules);
    }

    /** Every rule, by code. */
    public static List<Rule<?>> list() {
        return ALL;
    }

    /** The table for the contributor guide, in Markdown. */
    public static String asMarkdown() {
        StringBuilder text = new StringBuilder("| code | severity | object | rule |\n| --- | --- | --- | --- |\n");
        for (Rule<?> rule : ALL) {
            text.append("| ").append(rule.code()).append(" | ").append(rule.severity().getName().toLowerCase(Locale.ROOT))
                    .append(" | ")
                    .append(rule.type().getSimpleName().replace("EObject", "any")).append(" | ")
                    .append(rule.title(Locale.ENGLISH))
                    .append(" |\n");
        }
        return text.toString();
    }
}
