// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Option;

/**
 * The choice for an order as {@link SetupProblem}: each unit of each part is a task, each candidate an option for every
 * way its tools can stand ready, each tool at a setting a set-up that needs a seat.
 */
final class OrderProblem {

    /** Ways to stand that are combined for one candidate. */
    private static final int MOST_WAYS = 16;

    private final List<OrderPart> parts;
    private final List<PartWays> ways;
    private final ChoiceWeights weights;
    private final Stands stands;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final List<Stand> setups = new ArrayList<>();
    private final Map<String, Integer> limitOfTool = new LinkedHashMap<>();
    private final List<Integer> limits = new ArrayList<>();
    private final List<List<Option>> tasks = new ArrayList<>();
    /** For each task: part, unit, and for each option the candidate. */
    private final List<int[]> unitOf = new ArrayList<>();
    private final List<int[]> candidateOf = new ArrayList<>();

    OrderProblem(List<OrderPart> parts, List<PartWays> ways, ChoiceWeights weights) {
        this.parts = parts;
        this.ways = ways;
        this.weights = weights;
        ToolingJob any = parts.getFirst().job();
        stands = new Stands(new Seats(any.machine(), any.holders()), any.rules().forceReserve());
        for (int p = 0; p < parts.size(); p++) {
            List<List<Candidate>> units = ways.get(p).candidates();
            for (int u = 0; u < units.size(); u++) {
                addTask(p, u, units.get(u));
            }
        }
    }

    private void addTask(int part, int unit, List<Candidate> candidates) {
        List<Option> options = new ArrayList<>();
        List<Integer> of = new ArrayList<>();
        for (int c = 0; c < candidates.size(); c++) {
            for (int[] needs : needs(candidates.get(c), parts.get(part).turnedDeg())) {
                options.add(new Option(parts.get(part).pieces() * candidates.get(c).cost(weights), needs));
                of.add(c);
            }
        }
        if (!options.isEmpty()) {
            tasks.add(options);
            unitOf.add(new int[] { part, unit });
            candidateOf.add(of.stream().mapToInt(Integer::intValue).toArray());
        }
    }

    /** Every way the tools of a candidate can stand ready, as numbers of set-ups. */
    private List<int[]> needs(Candidate c, double turnedDeg) {
        Map<String, UsableTool> tools = new TreeMap<>();
        Map<String, TreeSet<Double>> angles = new TreeMap<>();
        for (Piece piece : c.pieces()) {
            tools.put(piece.tool().id(), piece.tool());
            TreeSet<Double> set = angles.computeIfAbsent(piece.tool().id(), id -> new TreeSet<>());
            int order = ToolFootprint.symmetryOrder(piece.tool().tool());
            piece.hits().forEach(h -> set.add(AngleFit.canonicalDeg(h.angleDeg() + turnedDeg, order)));
        }
        List<TreeSet<Integer>> all = List.of(new TreeSet<>());
        for (UsableTool t : tools.values()) {
            List<TreeSet<Integer>> more = new ArrayList<>();
            for (List<Stand> way : stands.of(t.tool(), angles.get(t.id()), 0, t.forceN()).ways()) {
                for (TreeSet<Integer> before : all) {
                    TreeSet<Integer> with = new TreeSet<>(before);
                    way.forEach(s -> with.add(number(s)));
                    more.add(with);
                }
            }
            all = more.subList(0, Math.min(MOST_WAYS, more.size()));
        }
        return all.stream().map(set -> set.stream().mapToInt(Integer::intValue).toArray()).toList();
    }

    private int number(Stand s) {
        String id = s.used().tool().id();
        return numbers.computeIfAbsent(id + "@" + (s.needsTurn() ? "any" : "" + s.angleDeg()), k -> {
            limitOfTool.computeIfAbsent(id, i -> {
                limits.add(s.used().tool().onHand());
                return limits.size() - 1;
            });
            setups.add(s);
            return setups.size() - 1;
        });
    }

    SetupProblem problem(SeatModel model) {
        int[] limitOf = setups.stream().mapToInt(s -> limitOfTool.get(s.used().tool().id())).toArray();
        return new SetupProblem(tasks, new double[setups.size()], limitOf, limits.stream().mapToInt(Integer::intValue).toArray(),
                model.seating(setups, false));
    }

    /** Candidate of each unit of each part; -1 where there is none. */
    List<int[]> chosen(int[] choice) {
        List<int[]> all = new ArrayList<>();
        for (PartWays w : ways) {
            int[] none = new int[w.candidates().size()];
            java.util.Arrays.fill(none, -1);
            all.add(none);
        }
        for (int t = 0; t < choice.length; t++) {
            all.get(unitOf.get(t)[0])[unitOf.get(t)[1]] = candidateOf.get(t)[choice[t]];
        }
        return all;
    }
}
