// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import punchwright.engine.feature.Feature;

/** Groups openings that a cluster tool can make together, the tool with most punches first. */
final class ClusterUnits {

    private ClusterUnits() {
    }

    /** The units with groups for clusters; a cluster must make at least two hits, or one of at least four openings. */
    static List<Unit> group(List<Unit> units, List<UsableTool> tools, ToolingRules rules, WaysMemory memory) {
        List<Unit> rest = new ArrayList<>(units);
        List<Unit> grouped = new ArrayList<>();
        ClusterFinder finder = new ClusterFinder(rules, memory);
        List<UsableTool> clusters = tools.stream()
                .filter(t -> t.tool().shape() == ToolShape.CLUSTER && t.tool().cluster().size() > 1)
                .sorted(Comparator.comparingInt((UsableTool t) -> -t.tool().cluster().size()).thenComparing(UsableTool::id))
                .toList();
        for (UsableTool tool : clusters) {
            List<Feature> openings = rest.stream().filter(u -> u.feature().isOpening()).map(Unit::feature).toList();
            ClusterFinder.Found found = finder.find(tool, openings);
            if (found.hits().size() > 1 || found.covered().size() >= 4) {
                Set<Integer> covered = new HashSet<>(found.covered().stream().map(Feature::number).toList());
                rest.removeIf(u -> covered.contains(u.feature().number()));
                List<Feature> members = found.covered().stream().sorted(Comparator.comparingInt(Feature::number)).toList();
                grouped.add(new Unit(members.getFirst(), members, found));
            }
        }
        grouped.addAll(rest);
        return grouped;
    }
}
