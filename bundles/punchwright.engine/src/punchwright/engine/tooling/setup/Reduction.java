// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling.setup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;

import punchwright.engine.tooling.setup.SetupProblem.Option;

/**
 * The same problem, smaller: options of set-ups that are closed or fit no seat are dropped, and so are options that another of
 * the same task beats with no more set-ups; tasks with the same set-ups in the same order of cost always take the same option,
 * so they become one with their costs added.
 */
final class Reduction {

    private final SetupProblem from;
    private final List<List<Option>> tasks = new ArrayList<>();
    /** For each new task and option, the option of each old task. */
    private final List<int[][]> origin = new ArrayList<>();
    private final List<int[]> members = new ArrayList<>();
    private boolean possible = true;

    private record Kept(int task, int[] options) {
    }

    /** @param allowed says of option {@code o} of task {@code t} whether it may be taken */
    Reduction(SetupProblem from, Allowed allowed) {
        this.from = from;
        Map<String, List<Kept>> groups = new LinkedHashMap<>();
        for (int t = 0; t < from.tasks().size(); t++) {
            int task = t;
            int[] kept = kept(t, o -> seated(from.tasks().get(task).get(o)) && allowed.is(task, o));
            possible &= kept.length > 0;
            groups.computeIfAbsent(key(t, kept), k -> new ArrayList<>()).add(new Kept(t, kept));
        }
        if (possible) {
            groups.values().forEach(this::join);
        }
    }

    @FunctionalInterface
    interface Allowed {
        boolean is(int task, int option);
    }

    /** Whether every task has an option left. */
    boolean possible() {
        return possible;
    }

    SetupProblem problem() {
        return new SetupProblem(tasks, from.setupCost(), from.limitOf(), from.limits(), from.seating());
    }

    /** A choice of the smaller problem as one of the original. */
    int[] expand(int[] choice) {
        int[] full = new int[from.tasks().size()];
        for (int g = 0; g < members.size(); g++) {
            for (int i = 0; i < members.get(g).length; i++) {
                full[members.get(g)[i]] = origin.get(g)[choice[g]][i];
            }
        }
        return full;
    }

    private boolean seated(Option o) {
        return from.seating() == null || Arrays.stream(o.setups()).allMatch(s -> Double.isFinite(from.seating().least(s)));
    }

    /** Options cheapest first, without those that another one beats. */
    private int[] kept(int t, IntPredicate allowed) {
        List<Option> options = from.tasks().get(t);
        List<Integer> kept = new ArrayList<>();
        java.util.stream.IntStream.range(0, options.size()).filter(allowed).boxed()
                .sorted(Comparator.comparingDouble((Integer o) -> options.get(o).cost())
                        .thenComparing(o -> options.get(o).setups().length))
                .forEach(o -> {
                    if (kept.stream().noneMatch(b -> within(options.get(b).setups(), options.get(o).setups()))) {
                        kept.add(o);
                    }
                });
        return kept.stream().mapToInt(Integer::intValue).toArray();
    }

    private static boolean within(int[] few, int[] many) {
        return Arrays.stream(few).allMatch(s -> Arrays.binarySearch(many, s) >= 0);
    }

    private String key(int t, int[] kept) {
        StringBuilder key = new StringBuilder();
        for (int o : kept) {
            key.append(Arrays.toString(from.tasks().get(t).get(o).setups()));
        }
        return key.toString();
    }

    private void join(List<Kept> group) {
        int options = group.getFirst().options().length;
        List<Option> joined = new ArrayList<>();
        int[][] of = new int[options][group.size()];
        for (int o = 0; o < options; o++) {
            double cost = 0;
            for (int i = 0; i < group.size(); i++) {
                of[o][i] = group.get(i).options()[o];
                cost += from.tasks().get(group.get(i).task()).get(of[o][i]).cost();
            }
            joined.add(new Option(cost, from.tasks().get(group.getFirst().task()).get(of[o][0]).setups()));
        }
        tasks.add(joined);
        origin.add(of);
        members.add(group.stream().mapToInt(Kept::task).toArray());
    }
}
