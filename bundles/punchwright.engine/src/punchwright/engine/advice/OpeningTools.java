// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.press.Machine;
import punchwright.engine.tooling.ExactTool;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.ToolSize;

/**
 * Tools for openings and forms that one hit does not make today: the exact tool (shape, size, corner radius, angle), and, where
 * it
 * is too large for any place, rectangular tools that cut it in fewer hits.
 */
final class OpeningTools {

    private static final int MOST_SLICES = 4;

    private final Drafts drafts;

    OpeningTools(Drafts drafts) {
        this.drafts = drafts;
    }

    void add(FeatureWays ways, BookPart part, Machine machine) {
        int hits = ways.alternatives().stream().filter(a -> a.chosen()).mapToInt(a -> a.hits()).findFirst()
                .orElse(Integer.MAX_VALUE);
        if (hits <= ways.features().size()) {
            return;
        }
        for (Feature f : ways.features()) {
            ExactTool.of(f, machine).ifPresent(exact -> {
                drafts.add(exact, part, machine);
                if (f.isOpening() && !Drafts.fits(exact, machine)) {
                    slices(f, part, machine);
                }
            });
        }
    }

    /** Tools as wide as the opening that cut it in a few slices, and squares that go around its corners. */
    private void slices(Feature f, BookPart part, Machine machine) {
        if (f.kind() != FeatureKind.RECTANGLE && f.kind() != FeatureKind.SQUARE) {
            return;
        }
        for (int n = 2; n <= MOST_SLICES; n++) {
            double slice = Math.ceil(f.lengthMm() / n + 2);
            drafts.add(ToolSize.sides(f.widthMm(), slice), part, machine);
            double side = Math.ceil(f.widthMm() / n + 2);
            drafts.add(ToolSize.sides(side, side), part, machine);
        }
    }
}
