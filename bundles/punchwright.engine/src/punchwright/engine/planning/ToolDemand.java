// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import punchwright.engine.geometry.Pose;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.Placement;
import punchwright.engine.tooling.Operation;
import punchwright.engine.tooling.PartHit;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.UsedTool;

/** Which tools the layouts of a sheet job need, at which angles, how often and with which force. */
final class ToolDemand {

    private final Map<String, PartPlan> parts = new LinkedHashMap<>();
    private final Map<String, Use> uses = new LinkedHashMap<>();

    private static final class Use {
        final Tool tool;
        final TreeSet<Double> angles = new TreeSet<>();
        int hits;
        double forceN;

        Use(Tool tool) {
            this.tool = tool;
        }
    }

    ToolDemand(List<PartPlan> partPlans, Nesting nesting) {
        partPlans.forEach(p -> parts.put(p.demand().id(), p));
        for (Layout layout : nesting.layouts()) {
            for (Placement placement : layout.placements()) {
                add(parts.get(placement.partId()), placement.pose(), layout.runs());
            }
        }
    }

    private void add(PartPlan part, Pose pose, int runs) {
        for (Operation op : part.operations().operations()) {
            Use use = uses.computeIfAbsent(op.tool().id(), k -> new Use(op.tool()));
            for (PartHit hit : op.hits()) {
                use.angles.add(roundedDeg(pose.applyAngleDeg(hit.angleDeg())));
            }
            use.hits += op.hits().size() * runs;
            use.forceN = Math.max(use.forceN, op.forceN());
        }
    }

    /** Angles that differ by less than a millionth of a degree are one setting. */
    static double roundedDeg(double deg) {
        double r = Math.rint(deg * 1e6) / 1e6;
        return r >= 360 ? 0 : r;
    }

    List<UsedTool> usedTools() {
        List<UsedTool> list = new ArrayList<>();
        uses.values().forEach(u -> list.add(new UsedTool(u.tool, List.copyOf(u.angles), u.hits, u.forceN)));
        return list;
    }
}
