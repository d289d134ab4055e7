// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import static punchwright.engine.sequence.WorkKind.FORM;
import static punchwright.engine.sequence.WorkKind.OPENING;
import static punchwright.engine.sequence.WorkKind.SEPARATING;
import static punchwright.engine.sequence.WorkKind.SLIT_NEAR_FORM;

import java.util.List;

/** The rules that hold for every sheet: common practice, no source. */
public final class PrecedenceRules {

    /** Openings, then forms, then separating slits; slits beside a form before the form. */
    public static final List<PrecedenceRule> USUAL = List.of(
            PrecedenceRule.kinds(OPENING, SLIT_NEAR_FORM, "The sheet is stiffest while its outer edges are still whole."),
            PrecedenceRule.kinds(OPENING, FORM, "A cut beside a finished form would bend or crush it."),
            PrecedenceRule.kinds(SLIT_NEAR_FORM, FORM, "The slitting tool would strike a form that already stands."),
            PrecedenceRule.kinds(OPENING, SEPARATING, "A part must be finished before its outer edges are cut free."),
            PrecedenceRule.kinds(FORM, SEPARATING, "A form needs the stiff sheet around it."),
            PrecedenceRule.kinds(SLIT_NEAR_FORM, SEPARATING, "Edges beside forms are cut early, all others last."));

    /** How far beyond the two tools' shapes a slit counts as beside a form, in mm. */
    public static final double FORM_KEEP_OUT_MM = 5;

    private PrecedenceRules() {
    }
}
