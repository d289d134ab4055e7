// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import punchwright.engine.finding.Finding;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;

/** The seats of a machine with the holders owned, and which of them take a tool. */
final class Seats {

    private final Machine machine;
    private final List<Seat> all = new ArrayList<>();

    Seats(Machine machine, List<Holder> holders) {
        this.machine = machine;
        for (Place place : machine.places()) {
            all.add(new Seat(place, null));
            holders.stream().filter(h -> h.onHand() > 0 && takes(place, h)).forEach(h -> all.add(new Seat(place, h)));
        }
    }

    static boolean takes(Place place, Holder holder) {
        return place.takesHolder() && holder.outerDiameterMm() <= place.maxToolDiameterMm() + 1e-6;
    }

    /** Seats that take the tool at this force (reserve included). */
    List<Seat> fitting(double diameterMm, double forceN) {
        return all.stream().filter(s -> diameterMm <= s.largestDiameterMm() + 1e-6 && forceN <= s.forceLimitN()).toList();
    }

    /** What the strongest seat that takes the tool carries, with no more than the press has, N; 0 where none takes it. */
    double strongestN(double diameterMm) {
        return fitting(diameterMm, 0).stream().mapToDouble(s -> Math.min(s.forceLimitN(), machine.pressForceN())).max().orElse(0);
    }

    /** Why no seat takes the tool; empty when one does. */
    Optional<Finding> refusal(String subject, double diameterMm, double forceN) {
        if (forceN > machine.pressForceN()) {
            return Optional.of(Finding.of(ToolingReason.PRESS_FORCE, subject, forceN / 1000, machine.name(),
                    machine.pressForceN() / 1000));
        }
        if (!fitting(diameterMm, forceN).isEmpty()) {
            return Optional.empty();
        }
        Optional<Seat> strongest = all.stream().filter(s -> diameterMm <= s.largestDiameterMm() + 1e-6)
                .max(Comparator.comparingDouble(Seat::forceLimitN));
        if (strongest.isPresent()) {
            Seat s = strongest.get();
            return Optional.of(Finding.of(ToolingReason.FORCE, subject, forceN / 1000, s.name(), s.forceLimitN() / 1000));
        }
        double largest = all.stream().mapToDouble(Seat::largestDiameterMm).max().orElse(0);
        return Optional.of(Finding.of(ToolingReason.DIAMETER, subject, diameterMm, machine.name(), largest));
    }
}
