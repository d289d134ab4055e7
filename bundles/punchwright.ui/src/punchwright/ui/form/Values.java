// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;

import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** Between what the model holds and what a text field shows. */
final class Values {

    private Values() {
    }

    /** What a field shows. */
    static String show(EStructuralFeature feature, Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof List<?> many) {
            return many.stream().map(v -> show(feature, v)).collect(Collectors.joining("; "));
        }
        return value instanceof Double d ? Numbers.plain(d) : value.toString();
    }

    /**
     * What was typed, as the model wants it.
     *
     * @throws IllegalArgumentException with a message for the person when it cannot be read
     */
    static Object read(EStructuralFeature feature, String typed) {
        if (!feature.isMany()) {
            return one(feature.getEType(), typed);
        }
        List<Object> values = new ArrayList<>();
        for (String piece : typed.split("[;\\n]")) {
            if (!piece.isBlank()) {
                values.add(one(feature.getEType(), piece.strip()));
            }
        }
        return values;
    }

    private static Object one(EClassifier type, String typed) {
        if (type == EcorePackage.Literals.EDOUBLE) {
            return figure(typed);
        }
        if (type == EcorePackage.Literals.EINT || type == EcorePackage.Literals.ELONG) {
            double figure = figure(typed);
            if (figure != Math.rint(figure) || Math.abs(figure) > Integer.MAX_VALUE) {
                throw new IllegalArgumentException(Texts.of("field.notWhole", typed.strip()));
            }
            return type == EcorePackage.Literals.EINT ? (Object) (int) figure : (Object) (long) figure;
        }
        return typed;
    }

    private static double figure(String typed) {
        OptionalDouble figure = typed.isBlank() ? OptionalDouble.of(0) : Numbers.parse(typed);
        return figure.orElseThrow(() -> new IllegalArgumentException(Texts.of("field.notAFigure", typed.strip())));
    }
}
