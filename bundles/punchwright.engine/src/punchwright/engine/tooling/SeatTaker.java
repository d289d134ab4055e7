// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.press.Place;
import punchwright.engine.tooling.setup.SeatPlan;

/** Gives out the places of each kind one after the other, holders first: from a plan of kinds to places of the machine. */
final class SeatTaker {

    private final Map<Integer, Deque<Place>> places = new TreeMap<>();
    private final Map<Integer, Deque<Place>> inserts = new TreeMap<>();

    SeatTaker(SeatModel model, SeatPlan plan) {
        List<SeatModel.Kind> kinds = model.kinds();
        for (int k = 0; k < kinds.size(); k++) {
            places.put(k, new ArrayDeque<>(kinds.get(k).places()));
            inserts.put(k, new ArrayDeque<>());
        }
        for (int[] carrier : plan.carriers()) {
            int kind = model.insertKind(carrier[0]);
            Place place = places.get(carrier[1]).removeFirst();
            List<Place> seats = new ArrayList<>();
            for (int i = 0; i < kinds.get(kind).holder().inserts(); i++) {
                seats.add(place);
            }
            inserts.get(kind).addAll(seats);
        }
    }

    /** The place of one more seat of the kind; null for by hand and nowhere. */
    Place place(int kind) {
        return inserts.get(kind).isEmpty() ? places.get(kind).pollFirst() : inserts.get(kind).removeFirst();
    }
}
