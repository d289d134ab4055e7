// SPDX-License-Identifier: EPL-2.0
package punchwright.model.names;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;

import org.eclipse.emf.ecore.EAttribute;
import org.junit.jupiter.api.Test;

import punchwright.model.shop.ShopPackage.Literals;
import punchwright.model.shop.ToolShape;

/** Values as people write them. */
class ValuesTest {

    private static Object parse(EAttribute attribute, String text, Locale locale) {
        return Values.parse(attribute, text, locale);
    }

    @Test
    void numbersInBothLanguages() {
        assertEquals(1.5, parse(Literals.STOCK_SHEET__THICKNESS_MM, " 1.5 ", Locale.ENGLISH));
        assertEquals(1.5, parse(Literals.STOCK_SHEET__THICKNESS_MM, "1,5", Locale.GERMAN));
        assertEquals(1.5, parse(Literals.STOCK_SHEET__THICKNESS_MM, "1.5", Locale.GERMAN));
        assertEquals(-0.25, parse(Literals.STOCK_SHEET__THICKNESS_MM, "-0.25", Locale.ENGLISH));
        assertEquals(12, parse(Literals.STOCK_SHEET__QUANTITY, "12", Locale.ENGLISH));
        assertEquals("1,5", Values.format(1.5, Locale.GERMAN));
        assertEquals("2500", Values.format(2500.0, Locale.ENGLISH));
    }

    @Test
    void literalsByName() {
        assertEquals(ToolShape.OBROUND, parse(Literals.TOOL__SHAPE, "Langloch", Locale.GERMAN));
        assertEquals(ToolShape.OBROUND, parse(Literals.TOOL__SHAPE, "obround", Locale.ENGLISH));
        assertEquals("Langloch", Values.format(ToolShape.OBROUND, Locale.GERMAN));
        assertEquals(true, parse(Literals.PLACE__TURNS, "ja", Locale.GERMAN));
        assertEquals(false, parse(Literals.PLACE__TURNS, "", Locale.ENGLISH));
    }

    @Test
    void whatIsNoValueIsNamed() {
        for (String text : new String[] {"", "a", "1,5", "1.5 mm", "1e", "0x10", "NaN"}) {
            assertThrows(IllegalArgumentException.class, () -> parse(Literals.STOCK_SHEET__THICKNESS_MM, text, Locale.ENGLISH),
                    text);
        }
        String message = assertThrows(IllegalArgumentException.class,
                () -> parse(Literals.STOCK_SHEET__THICKNESS_MM, "thin", Locale.ENGLISH)).getMessage();
        assertEquals("Thickness: 'thin' is not a number [mm]", message);
        assertThrows(IllegalArgumentException.class, () -> parse(Literals.STOCK_SHEET__QUANTITY, "1.5", Locale.ENGLISH));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> parse(Literals.TOOL__SHAPE, "star", Locale.ENGLISH))
                .getMessage()
                .contains("one of: Round, Square"));
    }
}
