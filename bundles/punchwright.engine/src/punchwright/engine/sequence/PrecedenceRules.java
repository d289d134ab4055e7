// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import static punchwright.engine.sequence.WorkKind.FORM;
import static punchwright.engine.sequence.WorkKind.OPENING;
import static punchwright.engine.sequence.WorkKind.SEPARATING;
import static punchwright.engine.sequence.WorkKind.SLIT_NEAR_FORM;

import java.util.List;
import java.util.stream.Stream;

/** The rules that hold for every sheet: common practice, no source. */
public final class PrecedenceRules {

    /**
     * Openings (the holes under collars and countersinks among them), then forms, then separating slits; slits beside a form
     * before the form. Forms: those that keep more room clear later, up before down, low before high. The texts of findings name
     * them by their place in this list.
     */
    public static final List<PrecedenceRule> USUAL = List.of(
            PrecedenceRule.kinds(OPENING, SLIT_NEAR_FORM, "The sheet is stiffest while its outer edges are still whole."),
            PrecedenceRule.kinds(OPENING, FORM, "A cut beside a finished form would bend or crush it; a collar needs its hole."),
            PrecedenceRule.kinds(SLIT_NEAR_FORM, FORM, "The slitting tool would strike a form that already stands."),
            PrecedenceRule.kinds(OPENING, SEPARATING, "A part must be finished before its outer edges are cut free."),
            PrecedenceRule.kinds(FORM, SEPARATING, "A form needs the stiff sheet around it."),
            PrecedenceRule.kinds(SLIT_NEAR_FORM, SEPARATING, "Edges beside forms are cut early, all others last."),
            PrecedenceRule.forms(FormOrder.KEEPS_CLEAR, "The form that keeps more room clear is made after its neighbour."),
            PrecedenceRule.forms(FormOrder.UP_FIRST, "Forms downward drag on table and dies; they are made last."),
            PrecedenceRule.forms(FormOrder.LOW_FIRST, "Low forms pass under the stripper while high ones are made."));

    private PrecedenceRules() {
    }

    /** The usual rules and those that the engineer added. */
    public static List<PrecedenceRule> with(List<PrecedenceRule> added) {
        return Stream.concat(USUAL.stream(), added.stream()).toList();
    }

    /** Whether the rules put the first group before the later one; custom gives way to any other rule. */
    static boolean puts(List<PrecedenceRule> rules, ToolGroup first, ToolGroup later) {
        boolean need = rules.stream().anyMatch(r -> !r.yields() && r.puts(first, later));
        return need || rules.stream().anyMatch(r -> r.yields() && r.puts(first, later))
                && rules.stream().noneMatch(r -> !r.yields() && r.puts(later, first));
    }

    /** Place in the usual rules from 1, 0 for a rule that was added. */
    static int number(PrecedenceRule rule) {
        return USUAL.indexOf(rule) + 1;
    }
}
