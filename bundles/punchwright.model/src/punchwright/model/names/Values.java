// SPDX-License-Identifier: EPL-2.0
package punchwright.model.names;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.Locale;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EcorePackage;

/** Values of attributes as text for people and back: numbers with the language's decimal sign, literals by their names. */
public final class Values {

    private Values() {
    }

    /** One value of an attribute as text; numbers with up to six decimals and without grouping. */
    public static String format(Object value, Locale locale) {
        return switch (value) {
            case null -> "";
            case Double d when Double.isFinite(d) -> numbers(locale).format(d);
            case Enumerator e -> Names.of(e, locale);
            case Boolean b -> locale.getLanguage().equals("de") ? b ? "ja" : "nein" : b ? "yes" : "no";
            case Object o -> o.toString();
        };
    }

    private static DecimalFormat numbers(Locale locale) {
        DecimalFormat format = new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(locale));
        format.setGroupingUsed(false);
        return format;
    }

    /**
     * Reads one value of an attribute.
     *
     * @param attribute the attribute
     * @param text      what a person wrote
     * @param locale    the person's language; a decimal point is understood in each
     * @return the value, of the attribute's type
     * @throws IllegalArgumentException when the text is no such value; the message names it and what is expected
     */
    public static Object parse(EAttribute attribute, String text, Locale locale) {
        EDataType type = attribute.getEAttributeType();
        String trimmed = text == null ? "" : text.strip();
        if (type == EcorePackage.Literals.EDOUBLE) {
            return number(attribute, trimmed, locale);
        }
        if (type == EcorePackage.Literals.EINT || type == EcorePackage.Literals.ELONG) {
            return whole(attribute, trimmed, locale);
        }
        if (type == EcorePackage.Literals.EBOOLEAN) {
            return yesOrNo(attribute, trimmed, locale);
        }
        if (type instanceof EEnum kind) {
            return literal(attribute, kind, trimmed, locale);
        }
        return text;
    }

    private static double number(EAttribute attribute, String text, Locale locale) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        ParsePosition position = new ParsePosition(0);
        Number local = format.parse(text, position);
        if (local != null && position.getIndex() == text.length() && Double.isFinite(local.doubleValue())) {
            return local.doubleValue();
        }
        if (text.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?")) {
            return Double.parseDouble(text);
        }
        String unit = Units.of(attribute.getName());
        throw wrong(attribute, text, locale, "a number", "eine Zahl", unit.isEmpty() ? "" : " [" + unit + "]");
    }

    private static Object whole(EAttribute attribute, String text, Locale locale) {
        try {
            return attribute.getEAttributeType() == EcorePackage.Literals.EINT ? (Object) Integer.valueOf(text)
                    : Long.valueOf(text);
        } catch (NumberFormatException e) {
            throw wrong(attribute, text, locale, "a whole number", "eine ganze Zahl", "");
        }
    }

    private static boolean yesOrNo(EAttribute attribute, String text, Locale locale) {
        return switch (text.toLowerCase(locale)) {
            case "yes", "ja", "true", "1", "x" -> true;
            case "no", "nein", "false", "0", "" -> false;
            default -> throw wrong(attribute, text, locale, "yes or no", "ja oder nein", "");
        };
    }

    private static Enumerator literal(EAttribute attribute, EEnum kind, String text, Locale locale) {
        StringBuilder choices = new StringBuilder();
        for (EEnumLiteral literal : kind.getELiterals()) {
            String name = Names.of(literal.getInstance(), locale);
            if (name.equalsIgnoreCase(text) || literal.getName().equalsIgnoreCase(text)) {
                return literal.getInstance();
            }
            choices.append(choices.isEmpty() ? "" : ", ").append(name);
        }
        throw wrong(attribute, text, locale, "one of", "eines von", ": " + choices);
    }

    private static IllegalArgumentException wrong(EAttribute attribute, String text, Locale locale, String english, String german,
            String more) {
        boolean de = locale.getLanguage().equals("de");
        return new IllegalArgumentException(Names.of(attribute, locale) + (de ? ": \u201e" + text + "\u201c ist nicht " + german
                : ": '" + text + "' is not " + english) + more);
    }
}
