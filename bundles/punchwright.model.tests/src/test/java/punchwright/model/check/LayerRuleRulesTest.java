// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When one pattern fits all that another fits; expected values by hand. */
class LayerRuleRulesTest {

    @ParameterizedTest
    @CsvSource({"*,ANY", "*,*X?", "BEND*,BEND", "bend*,BEND-?", "*TEXT*,A*TEXT?", "A?C,A?C", "A?C,ABC", "**,*", "A*B*C,AxBxxC"})
    void theFirstFitsAllThatTheSecondFits(String wide, String narrow) {
        assertTrue(LayerRuleRules.covers(wide, narrow));
    }

    @ParameterizedTest
    @CsvSource({"ANY,*", "BEND?,BEND*", "BEND*,*BEND", "ABC,A?C", "*TEXT,TEXT*", "A?,A", "A*B*C,AxCxxB"})
    void theFirstMissesSomeThatTheSecondFits(String wide, String narrow) {
        assertFalse(LayerRuleRules.covers(wide, narrow));
    }

    @Test
    void manyStarsAreDecidedAtOnce() {
        assertFalse(LayerRuleRules.covers("*a".repeat(40) + "b", "a".repeat(90)));
    }
}
