// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.tooling;

import punchwright.engine.tooling.Alternative;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.planner.plans.PartWeighing;
import punchwright.ui.text.Numbers;
import punchwright.ui.text.Texts;

/** The choice in one line, and in a second one what the wishes cost against the choice without them. */
final class OperationsSummary {

    private static final double PROVEN = 1e-6;

    /** Figures of a choice for one piece. */
    private record Figures(int hits, double seconds, double money, long tools, long missing) {
        static Figures of(ToolWeighing w, PartWeighing weighing) {
            int hits = 0;
            double seconds = 0;
            long missing = 0;
            for (FeatureWays ways : w.ways()) {
                Alternative way = FeatureLine.chosen(ways);
                missing += way == null ? ways.features().size() : 0;
                hits += way == null ? 0 : way.hits();
                seconds += way == null ? 0 : way.seconds();
            }
            long tools = w.operations().operations().stream().map(o -> o.tool().id()).distinct().count();
            return new Figures(hits, seconds, weighing.money(w.costSeconds()), tools, missing);
        }
    }

    private OperationsSummary() {
    }

    static String of(PartWeighing weighing, String currency) {
        Figures now = Figures.of(weighing.wished(), weighing);
        String text = Texts.of("operations.choice", now.hits(), Numbers.fixed(now.seconds(), 1),
                Numbers.fixed(now.money(), 3), currency, now.tools(), proof(weighing.wished()));
        if (weighing.wished().ways().isEmpty()) {
            text = Texts.of("operations.nothing");
        } else if (now.missing() > 0) {
            text += " " + Texts.of("operations.missing", now.missing());
        }
        if (weighing.wished() == weighing.free()) {
            return text + "\n" + Texts.of("operations.noWishes");
        }
        Figures free = Figures.of(weighing.free(), weighing);
        if (free.missing() != now.missing()) {
            return text + "\n" + Texts.of("operations.noComparison", free.missing());
        }
        return text + "\n" + Texts.of("operations.before", free.hits(), Numbers.fixed(free.seconds(), 1),
                Numbers.fixed(free.money(), 3),
                currency, free.tools(), signed(now.hits() - free.hits(), 0), signed(now.seconds() - free.seconds(), 1),
                signed(now.money() - free.money(), 3));
    }

    private static String proof(ToolWeighing w) {
        double gap = w.costSeconds() - w.boundSeconds();
        if (gap <= PROVEN * Math.max(1, w.costSeconds())) {
            return Texts.of("operations.proven");
        }
        return Texts.of("operations.gap", Numbers.fixed(100 * gap / w.costSeconds(), 1));
    }

    /** A difference with its sign. */
    static String signed(double value, int decimals) {
        String text = Numbers.fixed(value, decimals);
        boolean zero = text.chars().noneMatch(c -> Character.isDigit(c) && Character.getNumericValue(c) != 0);
        return zero ? "\u00b1" + text.replace("-", "") : value > 0 ? "+" + text : text.replace('-', '\u2212');
    }
}
