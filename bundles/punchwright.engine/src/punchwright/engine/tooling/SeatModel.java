// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;
import punchwright.engine.tooling.setup.Seating;

/**
 * The places of a machine, the inserts of holders and the head itself as kinds of seats with costs: what the choice of tools for
 * an order and the loading of places both decide by.
 *
 * <p>Places alike in size, force, turning and what stands in them are one kind. A seat costs the changes to its tool on every
 * sheet and, unless the tool stands there already, making it ready; among equals the smallest, weakest, non-turning place is
 * taken, so that larger ones stay free. By hand is a kind of its own on a machine with one head. Nowhere costs more than all else
 * together.
 */
final class SeatModel {

    /** Machine seconds that stand for "has no place". */
    static final double NOWHERE = 1e7;
    private static final double LITTLE = 1e-4;

    /**
     * One kind of seat.
     *
     * @param places  its places; empty for inserts, by hand and nowhere
     * @param holder  the holder whose inserts they are; null otherwise
     * @param ready   ids of tools that stand there already
     * @param byHand  whether tools are set into the head by hand
     */
    record Kind(List<Place> places, Holder holder, Set<String> ready, boolean byHand) {

        boolean nowhere() {
            return places.isEmpty() && holder == null && !byHand;
        }
    }

    private final Machine machine;
    private final Readiness readiness;
    private final List<Kind> kinds = new ArrayList<>();
    private final List<Seating.Carrier> carriers = new ArrayList<>();

    SeatModel(Machine machine, List<Holder> holders, Readiness readiness) {
        this.machine = machine;
        this.readiness = readiness;
        Map<String, Kind> alike = new LinkedHashMap<>();
        machine.places().stream().sorted(Comparator.comparing(Place::turns).thenComparing(Place::maxToolDiameterMm)
                .thenComparing(Place::forceLimitN)).forEach(p -> {
                    Set<String> ready = ready(p, null);
                    String holder = holderIn(p);
                    alike.computeIfAbsent(p.maxToolDiameterMm() + " " + p.forceLimitN() + p.turns() + p.takesHolder() + ready
                            + holder, k -> new Kind(new ArrayList<>(), null, ready, false)).places().add(p);
                });
        kinds.addAll(alike.values());
        holders.stream().sorted(Comparator.comparing(Holder::id)).forEach(this::addHolder);
        if (machine.headKind() == HeadKind.SINGLE_HEAD) {
            kinds.add(new Kind(List.of(), null, Set.of(), true));
        }
        kinds.add(new Kind(List.of(), null, Set.of(), false));
    }

    private Set<String> ready(Place p, String holderId) {
        Set<String> ready = new TreeSet<>();
        readiness.standing().stream().filter(s -> s.placeId().equals(p.id()) && java.util.Objects.equals(s.holderId(), holderId))
                .forEach(s -> ready.add(s.toolId()));
        return ready;
    }

    private String holderIn(Place p) {
        return readiness.standing().stream().filter(s -> s.placeId().equals(p.id()) && s.holderId() != null)
                .map(Readiness.Standing::holderId).findFirst().orElse("");
    }

    /** Inserts of a holder that stands in a place, and those of the others of its kind. */
    private void addHolder(Holder h) {
        int left = h.onHand();
        for (int k = 0; k < kinds.size() && left > 0; k++) {
            Kind kind = kinds.get(k);
            if (!kind.places().isEmpty() && holderIn(kind.places().getFirst()).equals(h.id())) {
                addCarrier(h, 1, changes(machine.times().toolChangeS()), List.of(k), ready(kind.places().getFirst(), h.id()));
                left--;
            }
        }
        List<Integer> in = new ArrayList<>();
        for (int k = 0; k < kinds.size(); k++) {
            if (!kinds.get(k).places().isEmpty() && Seats.takes(kinds.get(k).places().getFirst(), h)) {
                in.add(k);
            }
        }
        List<Integer> strong = in.stream().filter(k -> kinds.get(k).places().getFirst().forceLimitN() >= h.forceLimitN())
                .toList();
        if (left > 0 && !in.isEmpty()) {
            addCarrier(h, left, changes(machine.times().toolChangeS()) + readiness.loadSeconds(), strong.isEmpty() ? in : strong,
                    Set.of());
        }
    }

    private void addCarrier(Holder h, int most, double cost, List<Integer> in, Set<String> ready) {
        carriers.add(new Seating.Carrier(kinds.size(), h.inserts(), most, cost, in.stream().mapToInt(i -> i).toArray()));
        kinds.add(new Kind(List.of(), h, ready, false));
    }

    /** Kind of the inserts of a carrier. */
    int insertKind(int carrier) {
        return carriers.get(carrier).kind();
    }

    List<Kind> kinds() {
        return kinds;
    }

    private double changes(double seconds) {
        return seconds * readiness.runs();
    }

    /** Seats for these stands; {@code mayBeNowhere}: whether a stand may be left without. */
    Seating seating(List<Stand> stands, boolean mayBeNowhere) {
        int[] room = new int[kinds.size()];
        for (int k = 0; k < room.length; k++) {
            Kind kind = kinds.get(k);
            room[k] = kind.byHand() || kind.nowhere() && mayBeNowhere ? stands.size() : kind.places().size();
        }
        double[][] cost = new double[stands.size()][];
        for (int s = 0; s < cost.length; s++) {
            cost[s] = new double[room.length];
            for (int k = 0; k < room.length; k++) {
                cost[s][k] = cost(stands.get(s), kinds.get(k)) + k * LITTLE;
            }
        }
        return new Seating(room, cost, carriers);
    }

    private double cost(Stand s, Kind kind) {
        double load = kind.ready().contains(s.used().tool().id()) ? 0 : readiness.loadSeconds();
        if (!kind.places().isEmpty()) {
            return s.fits(kind.places().getFirst()) ? load + changes(machine.times().toolChangeS()) : Double.POSITIVE_INFINITY;
        }
        if (kind.holder() != null) {
            boolean fits = s.fits(kind.holder()) && s.forceN() <= weakestN(kind);
            return fits ? load + changes(machine.times().insertChangeS()) : Double.POSITIVE_INFINITY;
        }
        if (kind.byHand()) {
            return !s.needsTurn() || headTurns(s) ? load + changes(machine.times().handChangeS()) : Double.POSITIVE_INFINITY;
        }
        return NOWHERE - Math.min(s.hits(), 1_000_000);
    }

    /** Force that every place takes in which the holder of these inserts may stand. */
    private double weakestN(Kind inserts) {
        Seating.Carrier c = carriers.stream().filter(x -> kinds.get(x.kind()) == inserts).findFirst().orElseThrow();
        return java.util.Arrays.stream(c.in()).mapToDouble(k -> kinds.get(k).places().getFirst().forceLimitN()).min().orElse(0);
    }

    /** Whether a tool set by hand into the one head can be turned there: when a place that takes it turns. */
    boolean headTurns(Stand s) {
        return machine.places().stream().anyMatch(p -> p.turns() && s.diameterMm() <= p.maxToolDiameterMm() + 1e-6
                && s.forceN() <= p.forceLimitN());
    }
}
