// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.finding.WayOut;
import punchwright.engine.finding.WayOut.Kind;

/** Which tools the shop must own once or twice more so that a choice keeps to the tools on hand: one tool, else two. */
final class MoreOnHand {

    /** Choices made again at most. */
    private static final int MOST = 60;
    private static final int MOST_MORE = 3;
    private static final int MOST_WAYS = 2;

    private final List<List<Candidate>> candidates;
    private final double changeSeconds;
    private final ChoiceWeights weights;
    private final Map<String, Tool> tools = new LinkedHashMap<>();
    private int asked;

    private MoreOnHand(List<List<Candidate>> candidates, double changeSeconds, ChoiceWeights weights) {
        this.candidates = candidates;
        this.changeSeconds = changeSeconds;
        this.weights = weights;
        candidates.stream().flatMap(List::stream).flatMap(c -> c.pieces().stream()).map(p -> p.tool().tool())
                .filter(t -> ToolFootprint.symmetryOrder(t) > 0).forEach(t -> tools.putIfAbsent(t.id(), t));
    }

    /** Ways out, each found by choosing again; empty where none is found within the limit of work. */
    static List<WayOut> of(List<List<Candidate>> candidates, double changeSeconds, ChoiceWeights weights) {
        MoreOnHand all = new MoreOnHand(candidates, changeSeconds, weights);
        List<WayOut> ways = all.one();
        return ways.isEmpty() ? all.two() : ways;
    }

    private List<WayOut> one() {
        List<WayOut> ways = new ArrayList<>();
        for (int more = 1; more <= MOST_MORE && ways.isEmpty(); more++) {
            for (Tool t : tools.values()) {
                if (ways.size() < MOST_WAYS && works(Map.of(t.id(), t.onHand() + more))) {
                    ways.add(way(t, more));
                }
            }
        }
        return ways;
    }

    private List<WayOut> two() {
        List<Tool> list = List.copyOf(tools.values());
        for (int more = 1; more <= MOST_MORE; more++) {
            for (int i = 0; i < list.size(); i++) {
                for (int j = i + 1; j < list.size(); j++) {
                    Tool a = list.get(i);
                    Tool b = list.get(j);
                    if (works(Map.of(a.id(), a.onHand() + more, b.id(), b.onHand() + more))) {
                        return List.of(way(a, more).and(way(b, more)));
                    }
                }
            }
        }
        return List.of();
    }

    private boolean works(Map<String, Integer> onHand) {
        if (asked++ >= MOST) {
            return false;
        }
        int[] chosen = new Selection(candidates, changeSeconds, weights, new HashMap<>(onHand)).choose().chosen();
        for (int i = 0; i < chosen.length; i++) {
            if (chosen[i] < 0 && !candidates.get(i).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private static WayOut way(Tool t, int more) {
        return new WayOut(Kind.MORE, t.onHand() + more, t.id(), t.name());
    }
}
