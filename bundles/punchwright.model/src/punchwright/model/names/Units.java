// SPDX-License-Identifier: EPL-2.0
package punchwright.model.names;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/** The unit in which a feature is kept, read from its name. */
public final class Units {

    /** Stands for the library's currency. */
    public static final String MONEY = "\u00a4";

    /** Ends of names, the longer ones first. */
    private static final Map<String, String> BY_ENDING = new LinkedHashMap<>();
    private static final Set<String> MONEY_NAMES = Set.of("price", "grindCost", "purchaseValue", "replacementValue", "residualValue",
            "pricePerPiece", "totalCost", "cost", "perPiece", "total");
    private static final Set<String> SECONDS = Set.of("seconds", "startS", "timeSPerPart", "timeS");

    static {
        BY_ENDING.put("MmPerS2", "mm/s\u00b2");
        BY_ENDING.put("MmPerS", "mm/s");
        BY_ENDING.put("DegPerS", "\u00b0/s");
        BY_ENDING.put("KgPerDm3", "kg/dm\u00b3");
        BY_ENDING.put("PerM2Year", MONEY + "/(m\u00b2 a)");
        BY_ENDING.put("PercentPerYear", "%/a");
        BY_ENDING.put("hoursPerYear", "h/a");
        BY_ENDING.put("PerKwh", MONEY + "/kWh");
        BY_ENDING.put("PerKg", MONEY + "/kg");
        BY_ENDING.put("PerHour", MONEY + "/h");
        BY_ENDING.put("perHour", MONEY + "/h");
        BY_ENDING.put("MinutesPerTool", "min");
        BY_ENDING.put("minutesPerPiece", "min");
        BY_ENDING.put("minutesPerUnit", "min");
        BY_ENDING.put("PerMin", "1/min");
        BY_ENDING.put("Minutes", "min");
        BY_ENDING.put("Percent", "%");
        BY_ENDING.put("MPa", "MPa");
        BY_ENDING.put("Years", "a");
        BY_ENDING.put("Deg", "\u00b0");
        BY_ENDING.put("Mm", "mm");
        BY_ENDING.put("M2", "m\u00b2");
        BY_ENDING.put("Kn", "kN");
        BY_ENDING.put("Kw", "kW");
        BY_ENDING.put("Kg", "kg");
        BY_ENDING.put("TimeS", "s");
    }

    private Units() {
    }

    /**
     * The unit of a feature.
     *
     * @param featureName name of the feature, as {@code throatDepthMm}
     * @return the unit as it is printed, as {@code mm}; {@link #MONEY} for money; empty for counts, texts and factors
     */
    public static String of(String featureName) {
        if (MONEY_NAMES.contains(featureName)) {
            return MONEY;
        }
        if (SECONDS.contains(featureName)) {
            return "s";
        }
        for (Map.Entry<String, String> ending : BY_ENDING.entrySet()) {
            if (featureName.endsWith(ending.getKey())) {
                return ending.getValue();
            }
        }
        return "";
    }
}
