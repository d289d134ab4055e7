// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.Locale;
import java.util.Map;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;

/** Features in words, sizes in mm, as a drawing would note them. */
public final class Texts {

    private static final Map<FeatureKind, String> PATTERNS = Map.ofEntries(
            Map.entry(FeatureKind.ROUND, "round \u2300%1$s"), Map.entry(FeatureKind.SQUARE, "square \u25a1%1$s"),
            Map.entry(FeatureKind.RECTANGLE, "rectangle %1$s \u00d7 %2$s"),
            Map.entry(FeatureKind.ROUNDED_RECTANGLE, "rectangle %1$s \u00d7 %2$s R%3$s"),
            Map.entry(FeatureKind.OBROUND, "obround %1$s \u00d7 %2$s"),
            Map.entry(FeatureKind.SINGLE_FLAT, "single flat \u2300%1$s over %2$s"),
            Map.entry(FeatureKind.DOUBLE_FLAT, "double flat \u2300%1$s over %2$s"),
            Map.entry(FeatureKind.HEXAGON, "hexagon %1$s across flats"), Map.entry(FeatureKind.TRIANGLE, "triangle side %1$s"),
            Map.entry(FeatureKind.KEYHOLE, "keyhole %1$s \u00d7 %2$s"),
            Map.entry(FeatureKind.ARC_SLOT, "arc slot %1$s \u00d7 %2$s"),
            Map.entry(FeatureKind.FREE_OPENING, "opening %1$s \u00d7 %2$s"),
            Map.entry(FeatureKind.STRAIGHT_EDGE, "edge %1$s"), Map.entry(FeatureKind.ARC_EDGE, "arc edge %1$s R%3$s"),
            Map.entry(FeatureKind.CORNER_NOTCH, "corner notch %1$s \u00d7 %2$s"),
            Map.entry(FeatureKind.EDGE_NOTCH, "edge notch %1$s \u00d7 %2$s"));

    private Texts() {
    }

    public static String describe(Feature f) {
        String pattern = PATTERNS.get(f.kind());
        if (pattern == null) {
            return f.form().toLowerCase(Locale.ROOT).replace('_', ' ') + " " + number(f.lengthMm());
        }
        return String.format(Locale.ROOT, pattern, number(f.lengthMm()), number(f.widthMm()), number(f.cornerRadiusMm()));
    }

    /** At most two decimals, without trailing zeros. */
    public static String number(double mm) {
        String s = String.format(Locale.ROOT, "%.2f", mm);
        return s.contains(".") ? s.replaceAll("\\.?0+$", "") : s;
    }
}
