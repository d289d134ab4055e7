// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Picks one candidate for each feature so that press time, wear, web and shared tool changes together are least.
 *
 * <p>Each feature starts with its own cheapest; then features are revisited in order and take the candidate that is cheapest
 * given the set-ups the others use, until a round changes nothing (at most {@link #ROUNDS}). Set-ups of one tool at more
 * angles than are owned are forbidden. Deterministic; a local optimum, not a proven one.
 */
final class Selection {

    private static final int ROUNDS = 20;
    private static final double FORBIDDEN = 1e7;

    private final List<List<Candidate>> candidates;
    private final double changeSeconds;
    private final ChoiceWeights weights;
    private final Map<String, Integer> uses = new TreeMap<>();

    Selection(List<List<Candidate>> candidates, double changeSeconds, ChoiceWeights weights) {
        this.candidates = candidates;
        this.changeSeconds = changeSeconds;
        this.weights = weights;
    }

    /** Index of the chosen candidate for each feature; -1 where there is none. */
    int[] choose() {
        int[] chosen = new int[candidates.size()];
        for (int i = 0; i < chosen.length; i++) {
            chosen[i] = candidates.get(i).isEmpty() ? -1 : 0;
            count(i, chosen[i], 1);
        }
        boolean changed = true;
        for (int round = 0; changed && round < ROUNDS; round++) {
            changed = false;
            for (int i = 0; i < chosen.length; i++) {
                count(i, chosen[i], -1);
                int best = best(i, chosen[i]);
                changed |= best != chosen[i];
                chosen[i] = best;
                count(i, best, 1);
            }
        }
        return chosen;
    }

    private void count(int feature, int candidate, int by) {
        if (candidate >= 0) {
            candidates.get(feature).get(candidate).setups().forEach(s -> uses.merge(s, by, Integer::sum));
            uses.values().removeIf(n -> n == 0);
        }
    }

    private int best(int feature, int current) {
        int best = current;
        for (int c = 0; c < candidates.get(feature).size(); c++) {
            if (cost(feature, c) < cost(feature, best) - 1e-9) {
                best = c;
            }
        }
        return best;
    }

    private double cost(int feature, int candidate) {
        Candidate c = candidates.get(feature).get(candidate);
        double cost = c.cost(weights);
        for (String setup : c.setups()) {
            cost += uses.containsKey(setup) ? 0 : changeSeconds;
        }
        return cost + (tooManyAngles(c) ? FORBIDDEN : 0);
    }

    private boolean tooManyAngles(Candidate c) {
        TreeMap<String, Integer> all = new TreeMap<>(uses);
        c.setups().forEach(s -> all.merge(s, 1, Integer::sum));
        return c.pieces().stream().anyMatch(p -> all.keySet().stream().filter(s -> s.startsWith(p.tool().tool().id() + "@")).count()
                > p.tool().tool().onHand());
    }
}
