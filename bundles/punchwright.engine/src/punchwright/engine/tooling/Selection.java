// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import punchwright.engine.tooling.setup.SetupProblem;
import punchwright.engine.tooling.setup.SetupProblem.Option;
import punchwright.engine.tooling.setup.SetupProblem.Solution;
import punchwright.engine.tooling.setup.SetupSolver;

/**
 * Picks one candidate for each unit so that press time, wear, web and shared tool changes together are least.
 *
 * <p>Units with the same candidates always take the same one at the least cost, so they are one task with their costs added.
 * The rest is {@link SetupProblem}: a tool at an angle it cannot be turned from is one set-up, and a tool stands at no more
 * angles than are owned.
 */
final class Selection {

    /** Nodes after which a gap is stated instead of a proof. */
    private static final int MOST_NODES = 4000;

    private final List<List<Candidate>> candidates;
    private final double changeSeconds;
    private final ChoiceWeights weights;
    private final Map<String, Integer> onHand;
    private final TreeMap<String, Integer> setups = new TreeMap<>();
    private final List<Integer> limitOf = new ArrayList<>();
    private final List<Integer> limits = new ArrayList<>();
    private final Map<String, Integer> limitOfTool = new TreeMap<>();

    Selection(List<List<Candidate>> candidates, double changeSeconds, ChoiceWeights weights) {
        this(candidates, changeSeconds, weights, Map.of());
    }

    /** {@code onHand}: numbers on hand, by tool, other than owned. */
    Selection(List<List<Candidate>> candidates, double changeSeconds, ChoiceWeights weights, Map<String, Integer> onHand) {
        this.onHand = onHand;
        this.candidates = candidates;
        this.changeSeconds = changeSeconds;
        this.weights = weights;
    }

    /**
     * @param chosen index of the candidate of each unit; -1 where there is none or none keeps the limits
     */
    record Result(int[] chosen, double cost, double bound) {
    }

    Result choose() {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < candidates.size(); i++) {
            if (!candidates.get(i).isEmpty()) {
                groups.computeIfAbsent(key(candidates.get(i)), k -> new ArrayList<>()).add(i);
            }
        }
        List<List<Option>> tasks = groups.values().stream().map(this::task).toList();
        double[] costs = new double[setups.size()];
        Arrays.fill(costs, changeSeconds);
        Solution solution = SetupSolver.solve(new SetupProblem(tasks, costs, ints(limitOf), ints(limits)), MOST_NODES);
        int[] chosen = new int[candidates.size()];
        Arrays.fill(chosen, -1);
        int t = 0;
        for (List<Integer> group : groups.values()) {
            for (int i : group) {
                chosen[i] = Double.isInfinite(solution.cost()) ? -1 : solution.choice()[t];
            }
            t++;
        }
        return new Result(chosen, solution.cost(), solution.bound());
    }

    private String key(List<Candidate> list) {
        StringBuilder key = new StringBuilder();
        list.forEach(c -> key.append(c.setups()).append(Math.rint(c.cost(weights) * 1e6)));
        return key.toString();
    }

    private List<Option> task(List<Integer> group) {
        return candidates.get(group.getFirst()).stream().map(c -> new Option(group.size() * c.cost(weights), setups(c))).toList();
    }

    private int[] setups(Candidate c) {
        Map<String, Set<String>> needs = new TreeMap<>();
        Map<String, Tool> tools = new TreeMap<>();
        for (Piece p : c.pieces()) {
            tools.put(p.tool().id(), p.tool().tool());
            p.addSetups(needs.computeIfAbsent(p.tool().id(), id -> new TreeSet<>()));
        }
        List<Integer> numbers = new ArrayList<>();
        needs.forEach((id, all) -> all.forEach(s -> numbers.add(number(s, tools.get(id)))));
        return numbers.stream().mapToInt(Integer::intValue).distinct().sorted().toArray();
    }

    private int number(String setup, Tool tool) {
        Integer known = setups.get(setup);
        if (known != null) {
            return known;
        }
        int limit = limitOfTool.computeIfAbsent(tool.id(), id -> {
            limits.add(onHand.getOrDefault(id, tool.onHand()));
            return limits.size() - 1;
        });
        setups.put(setup, setups.size());
        limitOf.add(limit);
        return setups.size() - 1;
    }

    private static int[] ints(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }
}
