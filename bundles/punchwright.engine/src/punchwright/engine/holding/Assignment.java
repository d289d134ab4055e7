// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import punchwright.engine.tooling.HitRole;

/**
 * Which hit is made in which of the found positions: a whole part in the first position that serves all of it, else a whole
 * operation, else the single hit; separating edges of a split part in the last position that serves them, so that the part
 * stays in the skeleton as long as possible. Then forms are spared ({@link FormStands}).
 */
final class Assignment {

    private final Rig rig;
    private final double[] clamps;
    private final List<Stand> stands;
    private final Map<SheetHit, Integer> standOf = new IdentityHashMap<>();
    private final List<SheetHit> unreached = new ArrayList<>();
    private final Map<Integer, Set<Integer>> standsOfPart = new LinkedHashMap<>();

    Assignment(Rig rig, double[] clamps, List<Stand> stands, FormSpace space) {
        this.rig = rig;
        this.clamps = clamps;
        this.stands = stands;
        Map<Integer, List<SheetHit>> parts = new LinkedHashMap<>();
        rig.hits.forEach(h -> parts.computeIfAbsent(h.placement(), p -> new ArrayList<>()).add(h));
        parts.values().forEach(this::part);
        new FormStands(rig, clamps, stands, standOf).spare(space);
        for (SheetHit hit : rig.hits) {
            if (standOf.containsKey(hit)) {
                standsOfPart.computeIfAbsent(hit.placement(), p -> new TreeSet<>()).add(standOf.get(hit));
            }
        }
    }

    private void part(List<SheetHit> hits) {
        int stand = serving(hits, false);
        if (stand >= 0) {
            hits.forEach(h -> standOf.put(h, stand));
            return;
        }
        Map<Integer, List<SheetHit>> operations = new LinkedHashMap<>();
        hits.forEach(h -> operations.computeIfAbsent(h.operation(), o -> new ArrayList<>()).add(h));
        operations.values().forEach(this::operation);
    }

    private void operation(List<SheetHit> hits) {
        boolean last = hits.stream().anyMatch(h -> h.role() == HitRole.SLIT);
        int stand = serving(hits, last);
        for (SheetHit hit : hits) {
            int own = stand >= 0 ? stand : serving(List.of(hit), hit.role() == HitRole.SLIT);
            if (own >= 0) {
                standOf.put(hit, own);
            } else {
                unreached.add(hit);
            }
        }
    }

    /** The first (or last) position that serves all the hits, or -1. */
    private int serving(List<SheetHit> hits, boolean last) {
        Set<Need> needs = new LinkedHashSet<>();
        hits.forEach(h -> needs.add(rig.needOf.get(h)));
        for (int i = 0; i < stands.size(); i++) {
            int s = last ? stands.size() - 1 - i : i;
            Stand stand = stands.get(s);
            if (needs.stream().allMatch(n -> n.met(stand.side(), stand.zero(), clamps, rig.travelMm))) {
                return s;
            }
        }
        return -1;
    }

    /** Hits of a position, in the job's order. */
    List<SheetHit> hits(int stand) {
        return rig.hits.stream().filter(h -> standOf.getOrDefault(h, -1) == stand).toList();
    }

    List<SheetHit> unreached() {
        return unreached;
    }

    /** Placements made in more than one position. */
    List<Integer> splitParts() {
        return standsOfPart.entrySet().stream().filter(e -> e.getValue().size() > 1).map(Map.Entry::getKey).toList();
    }
}
