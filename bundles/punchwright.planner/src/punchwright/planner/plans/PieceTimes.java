// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.plans;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

import punchwright.engine.holding.SheetHit;
import punchwright.engine.motion.Cause;
import punchwright.engine.motion.Event;
import punchwright.engine.planning.SheetJob;
import punchwright.engine.planning.SheetRun;

/** Pieces of each part on all sheets of a job, and the strokes and moves that one piece takes on average, s. */
final class PieceTimes {

    private static final Set<Cause> OWN = EnumSet.of(Cause.MOVE, Cause.SETTLE, Cause.STROKE, Cause.NIBBLE, Cause.TURN_TOOL);

    private final Map<String, Integer> pieces = new HashMap<>();
    private final Map<String, Double> seconds = new HashMap<>();

    PieceTimes(SheetJob job) {
        job.runs().forEach(this::add);
    }

    private void add(SheetRun run) {
        int runs = run.layout().runs();
        run.layout().placements().forEach(p -> pieces.merge(p.partId(), runs, Integer::sum));
        Map<Integer, String> partOfHit = new HashMap<>();
        for (SheetHit h : run.hits()) {
            partOfHit.put(h.id(), run.layout().placements().get(h.placement()).partId());
        }
        for (Event e : run.timeline().events()) {
            if (OWN.contains(e.cause()) && partOfHit.containsKey(e.hitId())) {
                seconds.merge(partOfHit.get(e.hitId()), e.durationS() * runs, Double::sum);
            }
        }
    }

    int pieces(String partId) {
        return pieces.getOrDefault(partId, 0);
    }

    double secondsPerPiece(String partId) {
        return pieces(partId) == 0 ? 0 : seconds.getOrDefault(partId, 0.0) / pieces(partId);
    }
}
