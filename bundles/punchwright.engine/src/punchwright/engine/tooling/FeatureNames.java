// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.Locale;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FormDirection;

/** How features are named in findings. */
final class FeatureNames {

    private FeatureNames() {
    }

    static String subject(String part, Feature feature) {
        return "part " + part + ", feature " + feature.number() + " (" + what(feature) + ")";
    }

    /** Kind and size: "round 8 mm", "rectangle 40 x 20 mm". */
    static String what(Feature f) {
        String kind = f.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        String size = Math.abs(f.lengthMm() - f.widthMm()) < 1e-9 || f.widthMm() <= 0 ? number(f.lengthMm())
                : number(f.lengthMm()) + " x " + number(f.widthMm());
        return kind + " " + size + " mm" + (f.form() == null || f.form().isEmpty() ? ""
                : ", " + f.form().toLowerCase(Locale.ROOT))
                + (f.direction() == FormDirection.NONE ? "" : ", " + f.direction().name().toLowerCase(Locale.ROOT));
    }

    static String number(double mm) {
        String s = String.format(Locale.ROOT, "%.2f", mm);
        return s.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
