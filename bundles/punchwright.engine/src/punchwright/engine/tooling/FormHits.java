// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.geometry.Point;
import punchwright.engine.press.FormingRules;
import punchwright.engine.press.HitCount;

/**
 * The hits of one form: one; several in one place where the record says so or a louvre is higher than one hit makes it; or one
 * behind the other along a bead that is longer than its roller.
 */
final class FormHits {

    private FormHits() {
    }

    /** Whether the tool makes a form of this kind and size; a roller also makes longer beads of its width. */
    static boolean fits(Feature feature, Tool tool, double toleranceMm) {
        double longer = feature.lengthMm() - tool.lengthMm();
        boolean length = tool.shape() == ToolShape.ROLLER ? longer >= -toleranceMm - 1e-9
                : Math.abs(longer) <= toleranceMm + 1e-9;
        return tool.shape().forms() && tool.shape().name().equalsIgnoreCase(feature.form()) && length
                && Math.abs(tool.widthMm() - feature.widthMm()) <= toleranceMm + 1e-9;
    }

    /** Hits that the tool needs in one place, at least 1. */
    static int inOnePlace(Tool tool, double thicknessMm) {
        if (tool.room().hitsPerForm() > 0) {
            return tool.room().hitsPerForm();
        }
        return tool.shape() == ToolShape.LOUVRE
                ? FormingRules.hits(tool.formHeightMm(), FormingRules.highestLouvreMm(thicknessMm)) : 1;
    }

    static List<PartHit> of(Feature feature, Tool tool, double angleDeg, double thicknessMm) {
        double over = tool.shape() == ToolShape.ROLLER ? Math.max(0, feature.lengthMm() - tool.lengthMm()) : 0;
        int along = HitCount.along(tool.lengthMm() + over, tool.lengthMm(), FormingRules.beadOverlapMm(tool.lengthMm()));
        List<PartHit> hits = new ArrayList<>();
        for (int i = 0; i < along; i++) {
            double from = along == 1 ? 0 : over * ((double) i / (along - 1) - 0.5);
            Point at = feature.center().plus(Point.polar(from, Math.toRadians(feature.angleDeg())));
            hits.addAll(Collections.nCopies(inOnePlace(tool, thicknessMm), new PartHit(at, angleDeg, HitRole.FORM)));
        }
        return hits;
    }
}
