// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.holding.FormSpace;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.holding.TooNear;

/**
 * Which forms of a holding must wait for which: a form that the other would come too near to waits, where the other way round
 * both may be made. The level of a form is the longest chain of forms it waits for; where they wait in a circle, the first in
 * the order of the hits goes first.
 */
final class FormLevels {

    private final Map<SheetHit, HitRun> runOf = new IdentityHashMap<>();
    private final Map<HitRun, Set<HitRun>> disturbedBy = new HashMap<>();
    private final Map<HitRun, Integer> levels = new IdentityHashMap<>();
    private final Set<HitRun> open = java.util.Collections.newSetFromMap(new IdentityHashMap<>());

    /** @param runs  of forms in one holding */
    FormLevels(List<HitRun> runs, FormSpace space) {
        runs.forEach(r -> r.hits().forEach(h -> runOf.put(h, r)));
        for (HitRun later : runs) {
            for (SheetHit hit : later.hits()) {
                for (TooNear near : space.around(hit)) {
                    HitRun form = runOf.get(near.form());
                    if (form != null && form != later) {
                        disturbedBy.computeIfAbsent(form, k -> new LinkedHashSet<>()).add(later);
                    }
                }
            }
        }
    }

    /** 0 for a form that waits for none. */
    int of(HitRun run) {
        Integer known = levels.get(run);
        if (known != null) {
            return known;
        }
        open.add(run);
        int level = 0;
        for (HitRun other : disturbedBy.getOrDefault(run, Set.of())) {
            if (!open.contains(other) && !disturbedBy.getOrDefault(other, Set.of()).contains(run)) {
                level = Math.max(level, of(other) + 1);
            }
        }
        open.remove(run);
        levels.put(run, level);
        return level;
    }
}
