// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.feature.Feature;
import punchwright.engine.tooling.Alternative;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolUse;
import punchwright.planner.plans.PartWeighing;

/** Makes the lines of the table from a weighing: like features that are made alike share a line. */
final class FeatureLines {

    private final PartWeighing weighing;
    private final Map<Integer, Share> free = new TreeMap<>();
    private final Map<Integer, String> pinned;
    private final Map<String, Integer> balloons;

    /** What one feature takes in the choice without wishes. */
    private record Share(String tools, double money, double hits) {
    }

    private FeatureLines(PartWeighing weighing) {
        this.weighing = weighing;
        pinned = weighing.wishes().on(weighing.features()).pinned();
        balloons = balloons(weighing);
        weighing.free().ways().forEach(this::share);
    }

    static List<FeatureLine> of(PartWeighing weighing) {
        return new FeatureLines(weighing).lines();
    }

    /** Numbers of the tools: as they are loaded, then those without a place. */
    static Map<String, Integer> balloons(PartWeighing weighing) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        for (ToolUse use : weighing.loading().uses()) {
            numbers.putIfAbsent(use.tool().id(), use.number());
        }
        int next = weighing.loading().uses().size();
        for (var operation : weighing.wished().operations().operations()) {
            if (numbers.putIfAbsent(operation.tool().id(), next + 1) == null) {
                next++;
            }
        }
        return numbers;
    }

    private void share(FeatureWays ways) {
        Alternative way = FeatureLine.chosen(ways);
        int n = ways.features().size();
        for (Feature f : ways.features()) {
            free.put(f.number(), way == null ? new Share("", 0, 0)
                    : new Share(FeatureLine.tools(way), weighing.money(way.costSeconds()) / n, (double) way.hits() / n));
        }
    }

    private List<FeatureLine> lines() {
        Map<String, List<FeatureWays>> groups = new LinkedHashMap<>();
        for (FeatureWays ways : weighing.wished().ways()) {
            groups.computeIfAbsent(key(ways), k -> new ArrayList<>()).add(ways);
        }
        return groups.values().stream().map(this::line).toList();
    }

    /** Like features with like ways; features that are made together stay a line of their own. */
    private String key(FeatureWays ways) {
        if (ways.features().size() > 1) {
            return "#" + ways.features().get(0).number();
        }
        Feature f = ways.features().get(0);
        StringBuilder key = new StringBuilder(f.kind() + "|" + round(f.lengthMm()) + "|" + round(f.widthMm()) + "|"
                + round(f.cornerRadiusMm())
                + "|" + round(f.angleDeg()) + "|" + f.form() + "|" + pinned.get(f.number()) + "|" + free.get(f.number()));
        ways.alternatives().forEach(a -> key.append('|').append(a.chosen()).append(a.hits()).append(' ')
                .append(round(a.costSeconds()))
                .append(ids(a)));
        return key.toString();
    }

    private static List<String> ids(Alternative way) {
        return way.tools().stream().map(Tool::id).toList();
    }

    private static double round(double value) {
        return Math.rint(value * 1e3) / 1e3;
    }

    private FeatureLine line(List<FeatureWays> ways) {
        List<Feature> features = ways.stream().flatMap(w -> w.features().stream()).toList();
        Alternative way = FeatureLine.chosen(ways.get(0));
        double money = ways.stream().map(FeatureLine::chosen).filter(a -> a != null)
                .mapToDouble(a -> weighing.money(a.costSeconds())).sum();
        List<Share> before = features.stream().map(f -> free.getOrDefault(f.number(), new Share("", 0, 0))).toList();
        List<Integer> numbers = way == null ? List.of()
                : ids(way).stream().distinct().map(balloons::get).filter(n -> n != null).toList();
        return new FeatureLine(features, ways, numbers, String.join(" / ", before.stream().map(Share::tools).distinct().toList()),
                money,
                before.stream().mapToDouble(Share::money).sum(), (int) Math.round(before.stream().mapToDouble(Share::hits).sum()),
                pinnedName(features));
    }

    private String pinnedName(List<Feature> features) {
        return features.stream().map(f -> pinned.get(f.number())).filter(id -> id != null).distinct()
                .map(id -> weighing.wishes().pins().stream().filter(p -> p.toolId().equals(id)).map(p -> p.toolName()).findFirst()
                .orElse(id))
                .findFirst().orElse("");
    }
}
