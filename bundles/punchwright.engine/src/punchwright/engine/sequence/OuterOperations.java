// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.tooling.HitRole;

/**
 * Which nibbling operations follow a part's outer edge, told from the hits alone: those with a hit on the convex hull of all
 * hits of their placement (a nibbled outline lies around everything else of its part). Hull by the monotone chain: Andrew,
 * Information Processing Letters 9 (1979) 216-219.
 */
final class OuterOperations {

    private record Operation(int placement, int number) {
    }

    private final Set<Operation> outer = new HashSet<>();

    OuterOperations(List<SheetHit> hits) {
        Map<Integer, List<SheetHit>> placements = new LinkedHashMap<>();
        hits.forEach(h -> placements.computeIfAbsent(h.placement(), k -> new ArrayList<>()).add(h));
        placements.values().forEach(this::addOuter);
    }

    boolean contains(SheetHit hit) {
        return outer.contains(new Operation(hit.placement(), hit.operation()));
    }

    private void addOuter(List<SheetHit> hits) {
        if (hits.stream().noneMatch(h -> h.role() == HitRole.NIBBLE)) {
            return;
        }
        List<SheetHit> sorted = new ArrayList<>(hits);
        sorted.sort(Comparator.<SheetHit>comparingDouble(h -> h.at().x()).thenComparingDouble(h -> h.at().y()));
        addChain(sorted);
        addChain(sorted.reversed());
    }

    /** One half of the hull, its right-hand side seen along the order of the hits. */
    private void addChain(List<SheetHit> sorted) {
        List<SheetHit> chain = new ArrayList<>();
        for (SheetHit next : sorted) {
            while (chain.size() >= 2 && turn(chain.get(chain.size() - 2), chain.getLast(), next) <= 0) {
                chain.removeLast();
            }
            chain.add(next);
        }
        for (SheetHit h : chain) {
            if (h.role() == HitRole.NIBBLE) {
                outer.add(new Operation(h.placement(), h.operation()));
            }
        }
    }

    private static double turn(SheetHit a, SheetHit b, SheetHit c) {
        Point first = b.at().minus(a.at());
        return first.cross(c.at().minus(a.at()));
    }
}
