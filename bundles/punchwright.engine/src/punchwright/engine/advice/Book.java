// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.planning.Progress;
import punchwright.engine.press.Machine;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolChoice;
import punchwright.engine.tooling.ToolCheck;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.engine.tooling.ToolingJob;
import punchwright.engine.tooling.WaysMemory;

/** The order book's parts, each recognised once, with the choices of tools made so far. */
final class Book {

    private final AdviceJob job;
    private final Progress progress;
    private final Map<String, BookPart> parts = new LinkedHashMap<>();
    private final Map<Key, PartChoice> today = new LinkedHashMap<>();
    private final Map<Key, ToolWeighing> weighed = new LinkedHashMap<>();
    private final Map<Key, WaysMemory> memories = new LinkedHashMap<>();
    private final Map<String, PartChoice> probed = new LinkedHashMap<>();
    private final Map<String, Boolean> touched = new LinkedHashMap<>();
    private final PartFloor floor = new PartFloor(this);
    private int choices;

    private record Key(int machine, int part) {
    }

    Book(AdviceJob job, Progress progress) {
        this.job = job;
        this.progress = progress;
        for (BookOrder o : job.orders()) {
            o.demands().forEach(d -> parts.computeIfAbsent(key(d), k -> BookPart.of(parts.size(), d)));
        }
    }

    private static String key(punchwright.engine.planning.PartDemand d) {
        return d.id() + "|" + d.material().id() + "|" + d.thicknessMm();
    }

    AdviceJob job() {
        return job;
    }

    List<BookPart> parts() {
        return List.copyOf(parts.values());
    }

    BookPart part(punchwright.engine.planning.PartDemand d) {
        return parts.get(key(d));
    }

    /** Choices made up to now. */
    int choices() {
        return choices;
    }

    ToolingJob tooling(int machine, BookPart part, Owned owned) {
        return new ToolingJob(part.features(), part.demand().material(), part.demand().thicknessMm(),
                owned.machine(job.machines().get(machine).machine()), owned.tools(), owned.holders(), job.rules());
    }

    double rate(int machine) {
        return job.machines().get(machine).ratePerHour();
    }

    /** Today's choice with all alternatives. */
    ToolWeighing weighed(int machine, BookPart part) {
        return weighed.computeIfAbsent(new Key(machine, part.number()), k -> {
            progress.check();
            choices++;
            return ToolChoice.weigh(tooling(machine, part, Owned.today(job)), part.weights(rate(machine)),
                    part.demand().wishes().on(part.features()), memory(k));
        });
    }

    PartChoice today(int machine, BookPart part) {
        Key key = new Key(machine, part.number());
        PartChoice known = today.get(key);
        if (known == null) {
            known = PartChoice.of(tooling(machine, part, Owned.today(job)), part.weights(rate(machine)), weighed(machine, part));
            today.put(key, known);
        }
        return known;
    }

    /**
     * The choice with an addition; today's where it is not touched and work may be saved, and where today's costs no more,
     * since a
     * tool need not be used.
     */
    PartChoice with(int machine, BookPart part, Owned owned) {
        if (owned.addition() == null || job.options().remember() && !touches(machine, part, owned)) {
            return today(machine, part);
        }
        progress.check();
        ToolingJob tooling = tooling(machine, part, owned);
        WaysMemory memory = memory(machine, part, owned);
        if (memory.sameTools(tooling, part.demand().wishes().on(part.features()))) {
            return today(machine, part);
        }
        choices++;
        PartChoice then = PartChoice.of(tooling, part.weights(rate(machine)), ToolChoice.price(tooling,
                part.weights(rate(machine)), part.demand().wishes().on(part.features()), memory));
        PartChoice now = today(machine, part);
        boolean leftOut = owned.addition().tool() != null && now.made() && (!then.made()
                || now.costSeconds() <= then.costSeconds());
        return leftOut ? now : then;
    }

    /** A holder or an option changes the seats and with them what each tool can do; other times change everything. */
    private WaysMemory memory(int machine, BookPart part, Owned owned) {
        Machine now = job.machines().get(machine).machine();
        if (!job.options().remember() || !owned.machine(now).times().equals(now.times())) {
            return new WaysMemory();
        }
        today(machine, part);
        WaysMemory memory = memory(new Key(machine, part.number()));
        return owned.addition().tool() == null ? memory.withOtherSeats() : memory;
    }

    private WaysMemory memory(Key key) {
        return memories.computeIfAbsent(key, k -> new WaysMemory());
    }

    PartFloor floor() {
        return floor;
    }

    /** As {@link #with}, and kept: for parts refused today, which are asked for twice. */
    PartChoice remembered(int machine, BookPart part, Owned owned) {
        String key = owned.addition().id() + "|" + machine + "|" + part.number();
        PartChoice known = probed.get(key);
        if (known == null) {
            known = with(machine, part, owned);
            probed.put(key, known);
        }
        return known;
    }

    /**
     * Whether the addition can make the part cheaper or possible: a tool that is refused there, meets no feature or costs more
     * by its
     * {@link PartFloor} cannot.
     */
    boolean touches(int machine, BookPart part, Owned owned) {
        Addition a = owned.addition();
        return switch (a.kind()) {
            case OPTION -> a.machine().id().equals(job.machines().get(machine).machine().id());
            case HOLDER -> true;
            default -> touched.computeIfAbsent(a.id() + "|" + machine + "|" + part.number(), k -> toolTouches(machine, part,
                    owned));
        };
    }

    private boolean toolTouches(int machine, BookPart part, Owned owned) {
        Tool tool = owned.addition().tool();
        boolean die = owned.addition().kind() == AdditionKind.DIE;
        if (die && ToolCheck.refusal(tooling(machine, part, Owned.today(job)), owned(tool.id())).isEmpty()) {
            return false;
        }
        if (ToolCheck.refusal(tooling(machine, part, owned), tool).isPresent() || !Reach.meets(tool, part, job.rules())) {
            return false;
        }
        boolean sure = owned.addition().kind() == AdditionKind.SECOND || !job.options().pruned() || !today(machine, part).made();
        return sure || floor.gains(machine, part, tool);
    }

    private Tool owned(String id) {
        return job.tools().stream().filter(t -> t.id().equals(id)).findFirst().orElseThrow();
    }

    /** Numbers of the parts of an order by material and thickness, in order. */
    Map<String, List<Integer>> sheets(BookOrder order) {
        Map<String, List<Integer>> groups = new TreeMap<>();
        for (int i = 0; i < order.demands().size(); i++) {
            groups.computeIfAbsent(part(order.demands().get(i)).sheet(), k -> new ArrayList<>()).add(i);
        }
        return groups;
    }
}
