// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.tooling.HitRole;

/**
 * Moves operations between the found positions until no more forms can be spared: what would come too near to a form is made no
 * later than the form, and no form stands under a clamp of a later position. An operation moves only where that leaves fewer
 * of these faults, to the nearest position that does; cuts are tried before forms, then hit by hit what moves no other way.
 */
final class FormStands {

    private record Pair(SheetHit before, SheetHit form) {
    }

    private record Operation(int placement, int number) {
    }

    private final Rig rig;
    private final double[] clamps;
    private final List<Stand> stands;
    private final Map<SheetHit, Integer> standOf;
    private final Map<SheetHit, List<Pair>> pairs = new IdentityHashMap<>();
    private final List<Pair> all = new ArrayList<>();

    FormStands(Rig rig, double[] clamps, List<Stand> stands, Map<SheetHit, Integer> standOf) {
        this.rig = rig;
        this.clamps = clamps;
        this.stands = stands;
        this.standOf = standOf;
    }

    void spare(FormSpace space) {
        if (space.forms().isEmpty() || stands.size() < 2) {
            return;
        }
        gather(space);
        Map<Operation, List<SheetHit>> operations = new LinkedHashMap<>();
        rig.hits.stream().filter(standOf::containsKey).forEach(h -> operations
                .computeIfAbsent(new Operation(h.placement(), h.operation()), k -> new ArrayList<>()).add(h));
        boolean better = true;
        while (better) {
            better = round(operations, false) | round(operations, true);
        }
    }

    /** Pairs of hits whose order matters; of two forms that disturb each other either way none. */
    private void gather(FormSpace space) {
        Set<Pair> found = new LinkedHashSet<>();
        for (SheetHit hit : rig.hits) {
            space.around(hit).forEach(n -> found.add(new Pair(hit, n.form())));
        }
        for (Pair p : found) {
            if (standOf.containsKey(p.before) && standOf.containsKey(p.form) && !found.contains(new Pair(p.form, p.before))) {
                all.add(p);
                pairs.computeIfAbsent(p.before, k -> new ArrayList<>()).add(p);
                pairs.computeIfAbsent(p.form, k -> new ArrayList<>()).add(p);
            }
        }
    }

    private boolean round(Map<Operation, List<SheetHit>> operations, boolean forms) {
        Set<Operation> touched = new LinkedHashSet<>();
        all.stream().filter(this::violated).forEach(p -> {
            SheetHit h = forms ? p.form : p.before;
            touched.add(new Operation(h.placement(), h.operation()));
        });
        rig.standing.keySet().stream().filter(h -> forms && clamped(h))
                .forEach(h -> touched.add(new Operation(h.placement(), h.operation())));
        boolean better = false;
        for (Operation o : touched) {
            List<SheetHit> hits = operations.get(o);
            better |= move(hits);
            for (SheetHit h : hits.size() > 1 && faults(hits) > 0 ? hits : List.<SheetHit>of()) {
                better |= move(List.of(h));
            }
        }
        return better;
    }

    private boolean move(List<SheetHit> hits) {
        Map<SheetHit, Integer> before = new IdentityHashMap<>();
        hits.forEach(h -> before.put(h, standOf.get(h)));
        int least = faults(hits);
        int from = before.get(hits.getFirst());
        int best = -1;
        for (int s = 0; s < stands.size() && least > 0; s++) {
            int stand = s;
            if (hits.stream().allMatch(h -> serves(stand, h))) {
                hits.forEach(h -> standOf.put(h, stand));
                int now = faults(hits);
                if (now < least || best >= 0 && now == least && Math.abs(s - from) < Math.abs(best - from)) {
                    least = now;
                    best = s;
                }
            }
        }
        int to = best;
        hits.forEach(h -> standOf.put(h, to >= 0 ? to : before.get(h)));
        return best >= 0;
    }

    private boolean serves(int stand, SheetHit hit) {
        Stand s = stands.get(stand);
        return rig.needOf.get(hit).met(s.side(), s.zero(), clamps, rig.travelMm);
    }

    private int faults(List<SheetHit> hits) {
        int faults = 0;
        for (SheetHit h : hits) {
            faults += (int) pairs.getOrDefault(h, List.of()).stream().filter(this::violated).count();
            faults += h.role() == HitRole.FORM && clamped(h) ? 1 : 0;
        }
        return faults;
    }

    private boolean violated(Pair p) {
        return standOf.get(p.before) > standOf.get(p.form);
    }

    /** Whether a clamp of a later position that is used stands on the form. */
    private boolean clamped(SheetHit form) {
        Integer own = standOf.get(form);
        for (int s = own == null ? stands.size() : own + 1; s < stands.size(); s++) {
            if (rig.clampOn(form, stands.get(s).side(), stands.get(s).zero(), clamps) >= 0) {
                return true;
            }
        }
        return false;
    }
}
