// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

import punchwright.engine.tooling.Operation;
import punchwright.model.plan.SheetJob;
import punchwright.model.shop.Identified;
import punchwright.model.shop.Library;
import punchwright.model.shop.Machine;
import punchwright.model.shop.MultiToolHolder;
import punchwright.model.shop.Place;
import punchwright.planner.plans.PartWeighing;
import punchwright.ui.tooling.LoadedPlace.Loaded;

/** Reads what stands where: from the job of a plan, or from the choice for one part. */
public final class Loadings {

    private static final double N_PER_KN = 1000;

    private Loadings() {
    }

    private record Use(Place place, MultiToolHolder holder, Loaded loaded) {
    }

    /** The tools of a job of a plan. */
    public static List<LoadedPlace> of(SheetJob job) {
        List<Use> uses = new ArrayList<>();
        for (punchwright.model.plan.ToolUse u : job.getToolUses()) {
            if (u.getTool() != null) {
                boolean holderTurns = u.getHolder() != null && u.getHolder().isInsertsTurn();
                boolean turns = u.getHolder() == null ? u.getPlace() != null && u.getPlace().isTurns() : holderTurns;
                uses.add(new Use(u.getPlace(), u.getHolder(), new Loaded(u.getBalloon(), u.getTool(), u.getInsertPosition(),
                        u.getAngleDeg(),
                        turns, u.getClearanceMm(), u.getClearanceWantedMm(), u.getForceKn(), u.getForceLimitKn())));
            }
        }
        return grouped(uses);
    }

    /** The tools of the choice for one part; records are those of {@code library}. */
    static List<LoadedPlace> of(PartWeighing weighing, Library library, Machine machine) {
        List<Use> uses = new ArrayList<>();
        for (punchwright.engine.tooling.ToolUse u : weighing.loading().uses()) {
            List<Operation> made = weighing.wished().operations().operations().stream()
                    .filter(o -> o.tool().id().equals(u.tool().id()))
                    .toList();
            double force = largest(made, Operation::forceN) / N_PER_KN;
            Place place = u.place() == null ? null : byId(machine.getPlaces(), u.place().id());
            MultiToolHolder holder = u.holder() == null ? null : byId(library.getHolders(), u.holder().id());
            double limit = u.place() == null ? weighing.machine().pressForceN()
                    : Math.min(weighing.machine().pressForceN(), u.place().forceLimitN());
            limit = u.holder() == null ? limit : Math.min(limit, u.holder().forceLimitN());
            uses.add(new Use(place, holder, new Loaded(u.number(), byId(library.getTools(), u.tool().id()), u.insert(),
                    u.setAngleDeg(),
                    u.turning(), largest(made, Operation::clearanceMm), largest(made, Operation::clearanceNeedMm), force,
                    limit / N_PER_KN)));
        }
        return grouped(uses);
    }

    private static double largest(List<Operation> operations, Function<Operation, Double> figure) {
        return operations.stream().map(figure).max(Comparator.naturalOrder()).orElse(0.0);
    }

    private static <T extends Identified> T byId(List<T> records, String id) {
        return records.stream().filter(r -> Objects.equals(r.getId(), id)).findFirst().orElse(null);
    }

    /** In the order of the balloon numbers, inserts of a holder together. */
    private static List<LoadedPlace> grouped(List<Use> uses) {
        List<LoadedPlace> places = new ArrayList<>();
        for (Use use : uses) {
            LoadedPlace same = use.holder() == null || use.place() == null ? null : places.stream()
                    .filter(p -> p.place() == use.place() && p.holder() == use.holder()).findFirst().orElse(null);
            if (same == null) {
                places.add(new LoadedPlace(use.place(), use.holder(), List.of(use.loaded())));
            } else {
                List<Loaded> tools = new ArrayList<>(same.tools());
                tools.add(use.loaded());
                places.set(places.indexOf(same), new LoadedPlace(same.place(), same.holder(), List.copyOf(tools)));
            }
        }
        return places;
    }
}
