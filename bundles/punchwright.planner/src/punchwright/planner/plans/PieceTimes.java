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

/** Pieces of each part on all sheets of a job, and the strokes and moves that a piece or an operation takes on average, s. */
final class PieceTimes {

    private static final Set<Cause> OWN = EnumSet.of(Cause.MOVE, Cause.SETTLE, Cause.STROKE, Cause.NIBBLE, Cause.TURN_TOOL);

    private final Map<String, Integer> pieces = new HashMap<>();
    private final Map<String, Double> seconds = new HashMap<>();
    private final Map<String, Double> operationSeconds = new HashMap<>();

    PieceTimes(SheetJob job) {
        job.runs().forEach(this::add);
    }

    private void add(SheetRun run) {
        int runs = run.layout().runs();
        run.layout().placements().forEach(p -> pieces.merge(p.partId(), runs, Integer::sum));
        Map<Integer, SheetHit> hits = new HashMap<>();
        run.hits().forEach(h -> hits.put(h.id(), h));
        for (Event e : run.timeline().events()) {
            SheetHit hit = hits.get(e.hitId());
            if (OWN.contains(e.cause()) && hit != null) {
                String part = run.layout().placements().get(hit.placement()).partId();
                seconds.merge(part, e.durationS() * runs, Double::sum);
                operationSeconds.merge(part + "|" + hit.operation(), e.durationS() * runs, Double::sum);
            }
        }
    }

    /** Strokes and moves of one operation on one piece, on average; 0 where a neighbour makes its hits. */
    double secondsPerPiece(String partId, int operation) {
        return pieces(partId) == 0 ? 0 : operationSeconds.getOrDefault(partId + "|" + operation, 0.0) / pieces(partId);
    }

    int pieces(String partId) {
        return pieces.getOrDefault(partId, 0);
    }

    double secondsPerPiece(String partId) {
        return pieces(partId) == 0 ? 0 : seconds.getOrDefault(partId, 0.0) / pieces(partId);
    }
}
