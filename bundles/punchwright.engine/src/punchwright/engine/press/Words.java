// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.press;

import java.util.Locale;
import java.util.ResourceBundle;

/** Texts of questions, inputs and figures from {@code questions.properties}. */
final class Words {

    private Words() {
    }

    static String of(String key, Locale locale) {
        return ResourceBundle.getBundle("punchwright.engine.press.questions", locale, Words.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES)).getString(key);
    }
}
