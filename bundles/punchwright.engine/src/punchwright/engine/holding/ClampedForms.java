// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import punchwright.engine.finding.Finding;

/** Keeps the clamps of a holding off the forms that stand since an earlier one, as far as the hits leave room to shift them. */
final class ClampedForms {

    private final Rig rig;
    private final double[] clamps;
    private final Map<SheetHit, Integer> standing = new LinkedHashMap<>();

    ClampedForms(Rig rig, double[] clamps) {
        this.rig = rig;
        this.clamps = clamps;
    }

    /** The forms of a finished holding stand from now on. */
    void stand(List<SheetHit> hits, int holding) {
        hits.stream().filter(rig.standing::containsKey).forEach(h -> standing.put(h, holding));
    }

    /** The position nearest to the wish, inside the slack, with no clamp on a standing form; the wish where there is none. */
    double clear(Slack slack, int side, double wish) {
        if (free(side, wish)) {
            return wish;
        }
        TreeSet<Double> tries = new TreeSet<>();
        for (SheetHit form : standing.keySet()) {
            double x = side == 0 ? form.at().x() : rig.lengthMm - form.at().x();
            double keep = rig.standing.get(form).halfXMm() + rig.clampWidthMm / 2;
            for (double u : clamps) {
                tries.add(Math.ceil(x - u + keep));
                tries.add(Math.floor(x - u - keep));
            }
        }
        return tries.stream().filter(z -> z >= slack.low() && z <= slack.high() && free(side, z))
                .min((a, b) -> Double.compare(Math.abs(a - wish), Math.abs(b - wish))).orElse(wish);
    }

    private boolean free(int side, double zero) {
        return standing.keySet().stream().allMatch(f -> rig.clampOn(f, side, zero, clamps) < 0);
    }

    List<Finding> findings(int holding, int side, double zero) {
        List<Finding> findings = new ArrayList<>();
        standing.forEach((form, made) -> {
            int clamp = rig.clampOn(form, side, zero, clamps);
            if (clamp >= 0) {
                double y = side == 0 ? form.at().y() : rig.widthMm - form.at().y();
                findings.add(Finding.at(form.at(), HoldingReason.CLAMP_ON_FORM, "hit " + form.id(), holding + 1, clamp + 1,
                        form.use().tool().name(), form.id(), made + 1,
                        rig.clampDepthMm - y + rig.standing.get(form).halfYMm()));
            }
        });
        return findings;
    }
}
