// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The engineer's rules in order; the first that fits decides.
 *
 * @param rules     in the order in which they are asked
 * @param otherwise meaning where none fits
 */
public record LayerRules(List<LayerRule> rules, LayerMeaning otherwise) {

    /** Names in use for layers of drawings [common practice, no source]. */
    private static final Map<LayerMeaning, List<String>> USUAL_NAMES = Map.of(
            LayerMeaning.BEND_LINE, List.of("*BEND*", "*BIEGE*", "*FOLD*", "*KANT*LINIE*"),
            LayerMeaning.MARK, List.of("*MARK*", "*ENGRAV*", "*GRAVUR*", "*ETCH*", "*SCRIBE*"),
            LayerMeaning.FORM_UP, List.of("FORM*UP*", "FORM*OBEN*"),
            LayerMeaning.FORM_DOWN, List.of("FORM*DOWN*", "FORM*UNTEN*"),
            LayerMeaning.IGNORE, List.of("*CENTER*", "*CENTRE*", "*MITTE*", "DIM*", "*DIMENSION*", "*BEMASS*", "*MASSE*",
                    "*TEXT*", "*ANNO*", "*TITLE*", "DEFPOINTS", "*CONSTRUCTION*", "*HILFS*", "*HIDDEN*", "*VERDECKT*"));

    private static final List<String> USUAL_LINE_TYPES_IGNORED = List.of("*CENTER*", "*MITTE*", "*HIDDEN*", "*VERDECKT*");

    /** Everything is cut. */
    public static final LayerRules ALL_CUT = new LayerRules(List.of(), LayerMeaning.CUT);

    /** Names that tell their meaning; centre and hidden line types are not made; all else is cut. */
    public static final LayerRules USUAL = usual();

    public LayerRules {
        rules = List.copyOf(rules);
    }

    private static LayerRules usual() {
        List<LayerRule> rules = new ArrayList<>();
        for (LayerMeaning meaning : LayerMeaning.values()) {
            USUAL_NAMES.getOrDefault(meaning, List.of()).forEach(p -> rules.add(LayerRule.forLayer(p, meaning)));
        }
        USUAL_LINE_TYPES_IGNORED.forEach(p -> rules.add(LayerRule.forLineType(p, LayerMeaning.IGNORE)));
        return new LayerRules(rules, LayerMeaning.CUT);
    }

    /** Meaning of a line, by layer, line type as seen and colour number as seen (1 to 255). */
    public LayerMeaning meaning(String layer, String lineType, int colour) {
        for (LayerRule rule : rules) {
            if (rule.fits(layer, lineType, colour)) {
                return rule.meaning();
            }
        }
        return otherwise;
    }
}
