// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.form;

import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;

/** The unit of a field, read off the end of its name in the model, where the unit always stands. */
public final class Units {

    private static final String MONEY = "\u00a4";
    private static final Map<String, String> BY_ENDING = new LinkedHashMap<>();

    static {
        String[][] table = { { "MmPerS2", "mm/s\u00b2" }, { "MmPerS", "mm/s" }, { "KgPerDm3", "kg/dm\u00b3" }, { "DegPerS", "\u00b0/s" },
            { "PerMin", "1/min" }, { "PerM2Year", MONEY + "/(m\u00b2\u00b7a)" }, { "PerKwh", MONEY + "/kWh" }, { "PerKg", MONEY + "/kg" },
            { "PerHour", MONEY + "/h" }, { "PercentPerYear", "%/a" }, { "MPa", "MPa" }, { "Mm", "mm" }, { "Kn", "kN" }, { "Kg", "kg" },
            { "Kw", "kW" }, { "M2", "m\u00b2" }, { "Deg", "\u00b0" }, { "TimeS", "s" }, { "timeS", "s" }, { "cycleTimeS", "s" },
            { "Percent", "%" }, { "MinutesPerTool", "min" }, { "MinutesPerPiece", "min" }, { "minutesPerPiece", "min" },
            { "minutesPerUnit", "min" }, { "Minutes", "min" }, { "Years", "a" }, { "PerYear", "h/a" }, { "Value", MONEY },
            { "price", MONEY }, { "Price", MONEY }, { "pricePerPiece", MONEY }, { "Cost", MONEY } };
        for (String[] line : table) {
            BY_ENDING.put(line[0], line[1]);
        }
    }

    private Units() {
    }

    /** The unit, with {@code currency} in the place of money; empty where there is none. */
    public static String of(EStructuralFeature feature, String currency) {
        boolean figure = feature instanceof EAttribute a
                && (a.getEAttributeType() == EcorePackage.Literals.EDOUBLE || a.getEAttributeType() == EcorePackage.Literals.EINT);
        if (!figure) {
            return "";
        }
        return BY_ENDING.entrySet().stream().filter(e -> feature.getName().endsWith(e.getKey())).map(Map.Entry::getValue).findFirst()
                .orElse("").replace(MONEY, currency);
    }

    /** A label with its unit, as a table's header shows it: "Travel X [mm]". */
    public static String header(String label, String unit) {
        return unit.isEmpty() ? label : label + " [" + unit + "]";
    }
}
