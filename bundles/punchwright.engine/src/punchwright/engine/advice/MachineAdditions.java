// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import punchwright.engine.press.HeadKind;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;
import punchwright.engine.press.Times;
import punchwright.engine.tooling.Holder;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolFootprint;

/** Holders and machine options that could be bought, as variants of the records. */
final class MachineAdditions {

    /** Force limit of an insert of a new holder. Common practice, no source. */
    private static final double INSERT_FORCE_N = 120_000;
    private static final double WALL_MM = 8;
    private static final List<Integer> INSERTS = List.of(3, 4, 5, 6, 8, 10);
    /** Common practice, no source. */
    private static final double TURN_DEG_PER_S = 360;
    private static final double TURN_ACCURACY_MM = 0.05;
    private static final double AUTOMATIC_CHANGE_S = 5;

    private final Book book;
    private final PriceBook prices;
    private final AdviceJob job;
    private final Map<String, Addition> all = new LinkedHashMap<>();

    MachineAdditions(Book book, PriceBook prices) {
        this.book = book;
        this.prices = prices;
        job = book.job();
    }

    List<Addition> of(BookCost today) {
        for (int m = 0; m < job.machines().size(); m++) {
            Machine machine = job.machines().get(m).machine();
            int most = mostTools(today, m);
            if (most > machine.places().size()) {
                holders(machine, most, largest(today, m));
                if (machine.headKind() == HeadKind.SINGLE_HEAD) {
                    places(machine, most);
                }
            }
            turning(machine);
        }
        return List.copyOf(all.values());
    }

    /** Most tools that a sheet of an order needs on the machine. */
    private int mostTools(BookCost today, int m) {
        int most = 0;
        for (BookOrder o : job.orders()) {
            for (List<Integer> sheet : book.sheets(o).values()) {
                most = Math.max(most, tools(o, sheet, today, m).size());
            }
        }
        return most;
    }

    private Set<String> tools(BookOrder o, List<Integer> sheet, BookCost today, int m) {
        Set<String> tools = new TreeSet<>();
        List<PartLine> lines = today.on(o, m).lines();
        sheet.stream().filter(i -> lines.get(i).choice().made()).forEach(i -> tools.addAll(lines.get(i).choice().used()
                .keySet()));
        return tools;
    }

    /** Diameters of the round-about sizes used on the machine, rising. */
    private Set<Double> largest(BookCost today, int m) {
        Map<String, Tool> used = new TreeMap<>();
        for (BookOrder o : job.orders()) {
            today.on(o, m).lines().forEach(l -> l.choice().used().forEach((id, u) -> used.put(id, u.tool())));
        }
        Set<Double> sizes = new TreeSet<>();
        used.values().forEach(t -> sizes.add(Math.ceil(2 * ToolFootprint.circumscribedDiameterMm(t)) / 2));
        return sizes;
    }

    /** Holders owned once more, and holders whose inserts take the sizes used, as many as stand side by side on a circle. */
    private void holders(Machine machine, int most, Set<Double> sizes) {
        double outer = machine.places().stream().filter(Place::takesHolder).mapToDouble(Place::maxToolDiameterMm).max().orElse(0);
        for (Holder h : job.holders()) {
            if (h.outerDiameterMm() <= outer + 1e-6) {
                holder(new Holder(h.id(), h.name(), h.inserts(), h.maxInsertDiameterMm(), h.forceLimitN(), h.insertsTurn(), h
                        .outerDiameterMm(), h.onHand() + 1), "One more of " + h.name(), machine);
            }
        }
        for (int n : INSERTS) {
            double room = room(outer, n);
            sizes.stream().filter(d -> d <= room).max(Double::compare).filter(d -> n <= most + 1).ifPresent(d -> {
                for (boolean turns : new boolean[] { false, true }) {
                    String name = "Holder for " + n + " inserts up to " + d + " mm" + (turns ? ", turning" : "");
                    holder(new Holder("new-holder-" + n + "-" + d + (turns ? "-turning" : ""), name, n, d, INSERT_FORCE_N,
                            turns, outer,
                            1), name, machine);
                }
            });
        }
    }

    /** Largest insert of which so many stand on a circle with a wall between: {@code (D - d) sin(pi / n) >= d + wall}. */
    private static double room(double outer, int inserts) {
        double s = Math.sin(Math.PI / inserts);
        return (outer * s - WALL_MM) / (1 + s);
    }

    private void holder(Holder h, String name, Machine machine) {
        String id = "holder-" + h.id();
        all.putIfAbsent(id, new Addition(AdditionKind.HOLDER, id, name, null, h, null, Additions.given(job, id, name,
                prices.holder(h)),
                machine.name()));
    }

    /** A magazine with as many places as the largest set of tools wants; an automatic change where there is none. */
    private void places(Machine machine, int most) {
        Place like = machine.places().getFirst();
        List<Place> places = new ArrayList<>(machine.places());
        for (int i = places.size() + 1; places.size() < most; i++) {
            places.add(new Place(machine.id() + "-new-" + i, like.maxToolDiameterMm(), like.forceLimitN(), like.turns(), like
                    .turnAccuracyMm(), like.takesHolder()));
        }
        Times t = machine.times();
        boolean automatic = BookCost.byHandOnly(t) && t.toolChangeS() > AUTOMATIC_CHANGE_S;
        Times times = automatic ? new Times(t.settlingS(), t.strokeS(), t.nibblingPerMin(), t.nibblingMaxPitchMm(),
                AUTOMATIC_CHANGE_S, t.handChangeS(), t.insertChangeS(), t.turnDegPerS(), t.repositionS(), t.turnOverS(),
                        t.loadS(), t
                        .unloadS(), t.partRemovalS()) : t;
        int more = places.size() - machine.places().size();
        option(with(machine, places, times), "places-" + machine.id() + "-" + more, (automatic ? "Automatic change and " : "")
                + more
                + " more places on " + machine.name(), prices.option(false, more, automatic));
    }

    /** The first place of each size that does not turn, made to turn. */
    private void turning(Machine machine) {
        Set<Double> seen = new TreeSet<>();
        machine.places().stream().filter(Place::turns).forEach(p -> seen.add(p.maxToolDiameterMm()));
        for (int i = 0; i < machine.places().size(); i++) {
            Place p = machine.places().get(i);
            if (!p.turns() && seen.add(p.maxToolDiameterMm())) {
                List<Place> places = new ArrayList<>(machine.places());
                places.set(i, new Place(p.id(), p.maxToolDiameterMm(), p.forceLimitN(), true, TURN_ACCURACY_MM, p.takesHolder()));
                Times t = machine.times();
                double speed = t.turnDegPerS() > 0 ? t.turnDegPerS() : TURN_DEG_PER_S;
                Times times = new Times(t.settlingS(), t.strokeS(), t.nibblingPerMin(), t.nibblingMaxPitchMm(), t.toolChangeS(), t
                        .handChangeS(), t.insertChangeS(), speed, t.repositionS(), t.turnOverS(), t.loadS(), t.unloadS(), t
                                .partRemovalS());
                option(with(machine, places, times), "turning-" + machine.id() + "-" + p.id(), "Place " + p.id() + " of "
                        + machine
                        .name() + " turning", prices.option(true, 0, false));
            }
        }
    }

    private void option(Machine variant, String id, String name, Price price) {
        all.putIfAbsent(id, new Addition(AdditionKind.OPTION, id, name, null, null, variant, Additions.given(job, id, name,
                price),
                variant.name()));
    }

    private static Machine with(Machine m, List<Place> places, Times times) {
        return new Machine(m.id(), m.name(), m.throatDepthMm(), m.travelXMm(), m.travelYMm(), m.xAxis(), m.yAxis(),
                m.longestSheetMm(), m.minThicknessMm(), m.maxThicknessMm(), m.maxSheetMassKg(), m.pressForceN(), m.headKind(),
                        places,
                m.clamps(), times, m.dropOpeningMm(), m.accuracyMm(), m.options(), m.formClearance());
    }
}
