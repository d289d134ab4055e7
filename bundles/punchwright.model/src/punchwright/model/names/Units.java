// SPDX-License-Identifier: EPL-2.0
package punchwright.model.names;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

/** The unit in which a feature is kept, read from its name with the table of endings in {@code units.properties}. */
public final class Units {

    /** Stands for the library's currency. */
    public static final String MONEY = "\u00a4";

    private static final Properties BY_ENDING = new Properties();
    private static final Map<String, String> KNOWN = new ConcurrentHashMap<>();

    static {
        try (InputStream in = Units.class.getResourceAsStream("units.properties")) {
            BY_ENDING.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
        return KNOWN.computeIfAbsent(featureName, Units::find);
    }

    private static String find(String featureName) {
        for (int start = 0; start < featureName.length(); start++) {
            String unit = BY_ENDING.getProperty(featureName.substring(start));
            if (unit != null) {
                return unit;
            }
        }
        return "";
    }
}
