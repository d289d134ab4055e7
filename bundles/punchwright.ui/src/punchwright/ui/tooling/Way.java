// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.tooling.Alternative;
import punchwright.planner.plans.PartWeighing;

/**
 * One way to make the features of a line, beside the others: figures for one feature.
 *
 * @param way        what was weighed
 * @param money      cost, currency
 * @param difference what it costs more than the chosen way, currency; 0 for that itself
 */
public record Way(Alternative way, double money, double difference) {

    static List<Way> of(FeatureLine line, PartWeighing weighing) {
        double chosen = line.chosen() == null ? 0 : weighing.money(line.chosen().costSeconds());
        List<Way> ways = new ArrayList<>();
        for (Alternative a : line.ways().get(0).alternatives()) {
            double money = weighing.money(a.costSeconds());
            ways.add(new Way(a, money, money - chosen));
        }
        return ways;
    }

    /** Names of its tools. */
    public String tools() {
        return FeatureLine.tools(way);
    }
}
