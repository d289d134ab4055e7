// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.List;

import punchwright.engine.holding.HoldingPlan;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.motion.Timeline;
import punchwright.engine.nesting.Layout;
import punchwright.engine.proof.ProofResult;
import punchwright.engine.sequence.Sequence;

/** One layout worked out: hits, holdings, order of the run, time and proof. */
public record SheetRun(Layout layout, List<SheetHit> hits, HoldingPlan holdings, Sequence sequence, Timeline timeline,
        ProofResult proof) {

    public SheetRun {
        hits = List.copyOf(hits);
    }
}
