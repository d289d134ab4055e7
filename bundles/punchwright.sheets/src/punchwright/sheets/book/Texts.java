// SPDX-License-Identifier: EPL-2.0
package punchwright.sheets.book;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** Words of the workbooks in the person's language; English where there is no translation. */
public final class Texts {

    private final ResourceBundle bundle;
    private final Locale locale;

    public Texts(Locale locale) {
        this.locale = locale;
        this.bundle = ResourceBundle.getBundle("punchwright.sheets.book.texts", locale, Texts.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    public Locale locale() {
        return locale;
    }

    /** Text of a key; with arguments a pattern. */
    public String get(String key, Object... arguments) {
        return arguments.length == 0 ? bundle.getString(key) : new MessageFormat(bundle.getString(key), locale).format(arguments);
    }

    /** Word for a literal of an enumeration of the model. */
    public String word(Enum<?> literal) {
        String key = literal.getClass().getSimpleName() + "." + literal.name();
        return bundle.containsKey(key) ? bundle.getString(key) : literal.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** A number as a person reads it, without needless decimals. */
    public String number(double value, int decimals) {
        java.text.NumberFormat format = java.text.NumberFormat.getInstance(locale);
        format.setMaximumFractionDigits(decimals);
        return format.format(value);
    }
}
