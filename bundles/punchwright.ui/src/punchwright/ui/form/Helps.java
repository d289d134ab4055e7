// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.Locale;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import punchwright.ui.text.Texts;

/** What a field means: the model's own documentation, which is written in English; in other languages the label stands alone. */
final class Helps {

    private Helps() {
    }

    static String of(EStructuralFeature feature) {
        String documentation = EcoreUtil.getDocumentation(feature);
        boolean english = Locale.getDefault().getLanguage().equals("en");
        return documentation == null || !english ? Texts.of(feature) : withLabels(documentation, feature);
    }

    /** Names of the model's features in the text become the labels that a person knows. */
    private static String withLabels(String text, EStructuralFeature feature) {
        String readable = text;
        for (EStructuralFeature other : feature.getEContainingClass().getEAllStructuralFeatures()) {
            if (!other.getName().equals(other.getName().toLowerCase(Locale.ROOT))) {
                readable = readable.replaceAll("\\b" + other.getName() + "\\b", "'" + Texts.of(other) + "'");
            }
        }
        return readable;
    }
}
