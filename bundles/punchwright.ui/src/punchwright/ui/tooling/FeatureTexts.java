// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.model.shop.ToolShape;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** Features as a drawing would note them, in the language of the user. */
final class FeatureTexts {

    private FeatureTexts() {
    }

    /** Kind and size, "round \u23008"; for edges that are made together their number and length. */
    static String of(List<Feature> features, boolean together) {
        Feature first = features.get(0);
        if (together && features.size() > 1 && !first.isOpening()) {
            return Texts.of("feature.edges", features.size(), size(features.stream().mapToDouble(Feature::lengthMm).sum()));
        }
        return of(first);
    }

    static String of(Feature f) {
        if (f.kind() == FeatureKind.FORM) {
            ToolShape shape = ToolShape.getByName(f.form());
            return (shape == null ? f.form() : Texts.of(shape)) + " " + size(f.lengthMm());
        }
        return Texts.of("feature." + f.kind().name(), size(f.lengthMm()), size(f.widthMm()), size(f.cornerRadiusMm()));
    }

    /** Numbers with runs drawn together, "1\u20134, 7". */
    static String numbers(List<Feature> features) {
        List<Integer> sorted = features.stream().map(Feature::number).sorted().toList();
        List<String> runs = new ArrayList<>();
        for (int from = 0; from < sorted.size();) {
            int to = from;
            while (to + 1 < sorted.size() && sorted.get(to + 1) == sorted.get(to) + 1) {
                to++;
            }
            runs.add(from == to ? "" + sorted.get(from) : sorted.get(from) + (to == from + 1 ? ", " : "\u2013") + sorted.get(to));
            from = to + 1;
        }
        return String.join(", ", runs);
    }

    static String size(double mm) {
        return Numbers.plain(Math.round(mm * 100) / 100.0);
    }
}
