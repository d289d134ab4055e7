// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;

import org.junit.jupiter.api.Test;

import punchwright.engine.drawing.LayerMeaning;
import punchwright.engine.drawing.LayerRules;
import punchwright.model.check.Checks;
import punchwright.model.shop.LayerRule;
import punchwright.model.shop.Library;
import punchwright.model.shop.ShopFactory;

/** Layer rules of the shop as the engine asks them. */
class ShopLayerRulesTest {

    private final Library library = ShopFactory.eINSTANCE.createLibrary();

    private LayerRule rule(punchwright.model.shop.LayerMeaning meaning, int colour, List<String> layers, List<String> lineTypes) {
        LayerRule rule = ShopFactory.eINSTANCE.createLayerRule();
        rule.setMeaning(meaning);
        rule.setColour(colour);
        rule.getLayerPatterns().addAll(layers);
        rule.getLineTypePatterns().addAll(lineTypes);
        library.getLayerRules().add(rule);
        return rule;
    }

    @Test
    void aShopWithoutRulesHasTheUsualOnes() {
        assertEquals(LayerRules.USUAL, ShopLayerRules.of(library));
    }

    @Test
    void theUsualSetAsRecordsSaysTheSameAndBreaksNoRule() {
        library.setId("library");
        library.getLayerRules().addAll(ShopLayerRules.usual(Locale.ENGLISH));
        assertEquals(LayerRules.USUAL, ShopLayerRules.of(library));
        assertEquals(List.of(), library.getLayerRules().stream().flatMap(r -> Checks.alone(r).stream())
                .map(Object::toString).toList());
    }

    @Test
    void oneOfSeveralPatternsIsEnoughAndEveryKindStatedMustFit() {
        rule(punchwright.model.shop.LayerMeaning.BEND_LINE, 3, List.of("A", " B* "), List.of("DASH*", "DOT"));
        LayerRules rules = ShopLayerRules.of(library);
        assertEquals(LayerMeaning.BEND_LINE, rules.meaning("b1", "dashed", 3));
        assertEquals(LayerMeaning.BEND_LINE, rules.meaning("A", "DOT", 3));
        assertEquals(LayerMeaning.CUT, rules.meaning("A", "DOT", 4));
        assertEquals(LayerMeaning.CUT, rules.meaning("A", "CONTINUOUS", 3));
        assertEquals(LayerMeaning.CUT, rules.meaning("C", "DOT", 3));
    }

    @Test
    void anEmptyRuleDecidesNothingAndTheFirstThatFitsDecides() {
        rule(punchwright.model.shop.LayerMeaning.IGNORE, 0, List.of(), List.of());
        rule(punchwright.model.shop.LayerMeaning.MARK, 5, List.of(), List.of());
        rule(punchwright.model.shop.LayerMeaning.FORM_UP, 0, List.of("*"), List.of());
        LayerRules rules = ShopLayerRules.of(library);
        assertEquals(LayerMeaning.MARK, rules.meaning("X", "CONTINUOUS", 5));
        assertEquals(LayerMeaning.FORM_UP, rules.meaning("X", "CONTINUOUS", 6));
    }

    @Test
    void everyMeaningHasItsTwin() {
        assertEquals(LayerMeaning.values().length, punchwright.model.shop.LayerMeaning.VALUES.size());
        for (LayerMeaning meaning : LayerMeaning.values()) {
            assertEquals(meaning, ShopLayerRules.engine(ShopLayerRules.model(meaning)));
        }
    }

    @Test
    void aDrawingsOwnRulesAreAskedFirst() {
        LayerRule own = rule(punchwright.model.shop.LayerMeaning.CUT, 0, List.of("BEND-OUTLINE"), List.of());
        LayerRules rules = ShopLayerRules.before(List.of(own), LayerRules.USUAL);
        assertEquals(LayerMeaning.CUT, rules.meaning("BEND-OUTLINE", "CONTINUOUS", 7));
        assertEquals(LayerMeaning.BEND_LINE, rules.meaning("BEND", "CONTINUOUS", 7));
        assertTrue(rules.rules().size() > LayerRules.USUAL.rules().size());
    }
}
