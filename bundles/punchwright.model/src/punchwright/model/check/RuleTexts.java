// SPDX-License-Identifier: EPL-2.0
package punchwright.model.check;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The rules' texts: CODE.title, CODE.message and CODE.remedy in rules.properties and its translations. */
final class RuleTexts {

    private RuleTexts() {
    }

    static String text(String key, Locale locale, Object... arguments) {
        ResourceBundle texts = ResourceBundle.getBundle("punchwright.model.check.rules", locale, RuleTexts.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
        return new MessageFormat(texts.getString(key), locale).format(arguments);
    }
}
