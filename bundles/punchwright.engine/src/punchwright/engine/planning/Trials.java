// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.tooling.HitRole;
import punchwright.engine.tooling.Operation;
import punchwright.engine.tooling.PartHit;

/**
 * The ways to lay out parts, in the order of material they use: webs as wide as one slitting cut, so that neighbours share it;
 * webs as wide as the farthest reach of any hit; webs with a strip of skeleton between two cuts. Where tools find no place
 * because parts lie in several directions, the same web is tried with each part in one direction next.
 */
final class Trials {

    private final List<PartPlan> parts;
    private final double thicknessMm;
    private final PlanningRules rules;

    Trials(List<PartPlan> parts, double thicknessMm, PlanningRules rules) {
        this.parts = parts;
        this.thicknessMm = thicknessMm;
        this.rules = rules;
    }

    List<Trial> inOrder() {
        double reach = parts.stream().mapToDouble(p -> p.operations().overrunMm()).max().orElse(0);
        double cut = parts.stream().mapToDouble(Trials::cutMm).max().orElse(0);
        double apart = 2 * reach + Math.max(rules.skeletonMm(), 2 * thicknessMm);
        List<Trial> trials = new ArrayList<>();
        if (cut > 0 && cut < reach) {
            trials.add(new Trial(cut, true, false));
        }
        trials.add(new Trial(reach, true, false));
        trials.add(new Trial(apart, false, false));
        return trials;
    }

    /** Widest slitting cut along the part's outer contour, mm: twice the distance of a slitting hit from the edge. */
    private static double cutMm(PartPlan part) {
        double widest = 0;
        for (Operation op : part.operations().operations()) {
            for (PartHit hit : op.hits()) {
                if (hit.role() == HitRole.SLIT && !op.feature().isOpening()) {
                    widest = Math.max(widest, 2 * part.demand().shape().outer().distance(hit.at()));
                }
            }
        }
        return widest;
    }
}
