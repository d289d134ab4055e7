// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import punchwright.engine.finding.Finding;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;
import punchwright.engine.tooling.setup.SeatPlan;
import punchwright.engine.tooling.setup.Seating;
import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Option;
import punchwright.engine.tooling.setup.SetupSolver;

/**
 * Which tool stands in which place, for the least work of making ready and changing.
 *
 * <p>Each tool is a task of {@link SetupProblem} whose options are its {@link Stands ways to stand}; seats are those of
 * {@link SeatModel}. What fits no seat is set by hand on a machine with one head, and refused on a turret.
 */
public final class ToolLoading {

    /** Nodes of the integer program. */
    private static final int MOST_NODES = 2000;

    /**
     * Where nobody says what making ready takes: a holder is worth using before a tool is set by hand, and not while there are
     * places for all. An estimate between a change by hand and an automatic one.
     */
    private static final Readiness ONE_SHEET = new Readiness(List.of(), 20, 1);

    private final SeatModel model;
    private final Seats seats;
    private final double reserve;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Stand> stands = new ArrayList<>();
    private final List<List<Option>> tasks = new ArrayList<>();
    private final List<Place> order;

    private ToolLoading(Machine machine, List<Holder> holders, double reserve, Readiness readiness) {
        model = new SeatModel(machine, holders, readiness);
        seats = new Seats(machine, holders);
        order = machine.places();
        this.reserve = reserve;
    }

    /** With the usual reserve for worn edges. */
    public static Loading load(Machine machine, List<UsedTool> tools, List<Holder> holders) {
        return load(machine, tools, holders, ToolingRules.USUAL.forceReserve());
    }

    /**
     * Nothing stands ready, one sheet.
     *
     * @param reserve factor on each force against the limits of places and holders
     */
    public static Loading load(Machine machine, List<UsedTool> tools, List<Holder> holders, double reserve) {
        return load(machine, tools, holders, reserve, ONE_SHEET);
    }

    /**
     * @param reserve   factor on each force against the limits of places and holders
     * @param readiness what stands ready, and over how many sheets a set-up is used
     */
    public static Loading load(Machine machine, List<UsedTool> tools, List<Holder> holders, double reserve, Readiness readiness) {
        return new ToolLoading(machine, holders, reserve, readiness).run(tools);
    }

    private Loading run(List<UsedTool> tools) {
        tools.forEach(this::addTask);
        double[] none = new double[stands.size()];
        int[] free = new int[stands.size()];
        Arrays.fill(free, -1);
        Seating seating = model.seating(stands, true);
        int[] choice = SetupSolver.solve(new SetupProblem(tasks, none, free, new int[0], seating), MOST_NODES).choice();
        List<Integer> chosen = new ArrayList<>();
        for (int t = 0; t < choice.length; t++) {
            Arrays.stream(tasks.get(t).get(choice[t]).setups()).forEach(chosen::add);
        }
        int[] setups = chosen.stream().mapToInt(Integer::intValue).toArray();
        return new Loading(uses(setups, SeatPlan.of(seating, setups)), findings);
    }

    private void addTask(UsedTool used) {
        Tool tool = used.tool();
        var refusal = seats.refusal(tool.name(), ToolFootprint.circumscribedDiameterMm(tool), used.forceN() * reserve);
        if (refusal.isPresent()) {
            findings.add(refusal.get());
            return;
        }
        Stands.Found found = new Stands(seats, reserve).of(tool, used.anglesDeg(), used.hits(), used.forceN());
        if (found.ways().isEmpty()) {
            findings.add(Double.isNaN(found.impossible())
                    ? Finding.of(ToolingReason.ANGLES, tool.name(), tool.name(), found.settings(), tool.onHand())
                    : Finding.of(ToolingReason.ANGLE, tool.name(), found.impossible(), tool.name()));
            return;
        }
        List<Option> options = new ArrayList<>();
        for (List<Stand> way : found.ways()) {
            int first = stands.size();
            stands.addAll(way);
            options.add(new Option(0, java.util.stream.IntStream.range(first, stands.size()).toArray()));
        }
        tasks.add(options);
    }

    /** Stands by place of the machine, inserts of a holder together, those without a place last. */
    private List<ToolUse> uses(int[] setups, SeatPlan plan) {
        List<Spot> spots = new ArrayList<>();
        SeatTaker taker = new SeatTaker(model, plan);
        for (int i = 0; i < setups.length; i++) {
            SeatModel.Kind kind = model.kinds().get(plan.kindOf()[i]);
            spots.add(new Spot(stands.get(setups[i]), kind, taker.place(plan.kindOf()[i])));
        }
        spots.sort(Comparator.comparingInt((Spot s) -> s.place() == null ? Integer.MAX_VALUE : order.indexOf(s.place())));
        List<ToolUse> uses = new ArrayList<>();
        for (Spot s : spots) {
            add(s, uses);
        }
        return uses;
    }

    private record Spot(Stand stand, SeatModel.Kind kind, Place place) {
    }

    private void add(Spot s, List<ToolUse> uses) {
        Tool tool = s.stand().used().tool();
        boolean canTurn = ToolFootprint.symmetryOrder(tool) != 0 && tool.freedom() == AngleFreedom.ANY;
        if (s.kind().nowhere()) {
            findings.add(Finding.of(ToolingReason.NO_PLACE, tool.name(), tool.name(), s.stand().forceN() / 1000));
            return;
        }
        if (s.kind().byHand()) {
            findings.add(Finding.of(ToolingReason.BY_HAND, tool.name(), tool.name()));
        }
        boolean turning = canTurn && (s.place() == null ? model.headTurns(s.stand())
                : new Seat(s.place(), s.kind().holder()).turns());
        int insert = s.kind().holder() == null ? 0
                : 1 + (int) uses.stream().filter(u -> u.place() == s.place() && u.holder() != null).count();
        uses.add(new ToolUse(uses.size() + 1, tool, s.place(), s.kind().holder(), insert, turning, turning ? 0 : s.stand()
                .angleDeg()));
    }
}
