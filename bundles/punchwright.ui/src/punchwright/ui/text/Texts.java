// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;

import punchwright.model.names.Names;

/** The visible texts in the language of the user, from {@code texts.properties} and its German twin. */
public final class Texts {

    private static final String BUNDLE = "punchwright.ui.text.texts";
    private static final ResourceBundle BUNDLE_OF_USER = bundle(Locale.getDefault());

    private Texts() {
    }

    private static ResourceBundle bundle(Locale locale) {
        return ResourceBundle.getBundle(BUNDLE, locale, Texts.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** The text of a key with its arguments put in; a missing key shows as {@code !key!}, so that a test and a person see it. */
    public static String of(String key, Object... arguments) {
        String pattern = find(key);
        if (pattern == null) {
            return "!" + key + "!";
        }
        return new MessageFormat(pattern, Locale.getDefault()).format(arguments);
    }

    /** The text of a key, or null. */
    public static String find(String key) {
        try {
            return BUNDLE_OF_USER.getString(key);
        } catch (MissingResourceException e) {
            return null;
        }
    }

    /** The name of a literal, from the model. */
    public static String of(Enumerator literal) {
        return literal == null ? "" : Names.of(literal, Locale.getDefault());
    }

    /** The name of a feature, from the model. */
    public static String of(EStructuralFeature feature) {
        return Names.of(feature, Locale.getDefault());
    }

    /** The name of a class, from the model. */
    public static String of(EClass type) {
        return Names.of(type, Locale.getDefault());
    }
}
