// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;

/** The unit of a field, as the model names it, with the library's currency in the place of money. */
public final class Units {

    private Units() {
    }

    /** The unit; empty where there is none. */
    public static String of(EStructuralFeature feature, String currency) {
        boolean figure = feature instanceof EAttribute a
                && (a.getEAttributeType() == EcorePackage.Literals.EDOUBLE
                || a.getEAttributeType() == EcorePackage.Literals.EINT);
        return figure ? punchwright.model.names.Units.of(feature.getName()).replace(punchwright.model.names.Units.MONEY, currency)
                : "";
    }

    /** A label with its unit, as a table's header shows it: "Travel X [mm]". */
    public static String header(String label, String unit) {
        return unit.isEmpty() ? label : label + " [" + unit + "]";
    }
}
