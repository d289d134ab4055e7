// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.tooling.Alternative;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.engine.tooling.ToolingReason;
import punchwright.planner.convert.Texts;
import punchwright.planner.plans.PartWeighing;

/** A weighing as lines for a terminal; features made alike stand together. */
final class WeighingTable {

    private static final int MOST_ALTERNATIVES = 5;

    private final PartWeighing weighing;
    private final String currency;
    private final List<String> lines = new ArrayList<>();

    private WeighingTable(PartWeighing weighing, String currency) {
        this.weighing = weighing;
        this.currency = currency;
    }

    static List<String> of(PartWeighing weighing, String currency) {
        WeighingTable table = new WeighingTable(weighing, currency);
        table.head();
        table.alike().forEach(table::ways);
        return table.lines;
    }

    private void head() {
        ToolWeighing w = weighing.wished();
        String proof = w.boundSeconds() >= w.costSeconds() * (1 - 1e-6) ? "proven best"
                : String.format(Locale.ROOT, "at least %.2f s", w.boundSeconds());
        line("%s on %s: %s", weighing.features().part(), weighing.machine().name(), made(w) ? String.format(Locale.ROOT,
                "%.2f s, %.3f %s a piece with its share of changes, %s", w.costSeconds(), weighing.money(w.costSeconds()),
                        currency,
                proof) : "not all of it can be made");
        if (weighing.free() != weighing.wished() && made(w) && made(weighing.free())) {
            double more = w.costSeconds() - weighing.free().costSeconds();
            line("the pins and bans cost %+.2f s, %+.3f %s a piece", more, weighing.money(more), currency);
        }
        line("%-46s %5s %8s %9s %7s %9s", "", "hits", "s", currency, "force %", "wear");
    }

    private static boolean made(ToolWeighing w) {
        return w.operations().complete();
    }

    /** Ways that read the same, with all the features they are for. */
    private Map<String, List<FeatureWays>> alike() {
        Map<String, List<FeatureWays>> groups = new LinkedHashMap<>();
        for (FeatureWays w : weighing.wished().ways()) {
            String key = what(w.features()) + w.alternatives().stream().map(a -> row(a)).collect(Collectors.joining());
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(w);
        }
        return groups;
    }

    private void ways(String key, List<FeatureWays> same) {
        FeatureWays first = same.getFirst();
        String numbers = same.stream().flatMap(w -> w.features().stream()).map(f -> String.valueOf(f.number())).limit(12).collect(
                Collectors.joining(", "));
        int count = same.stream().mapToInt(w -> w.features().size()).sum();
        line("feature %s%s: %s", numbers, count > 12 ? " and " + (count - 12) + " more" : "", what(first.features()));
        if (first.alternatives().isEmpty()) {
            lines.add("  no way to make it");
        }
        if (first.alternatives().stream().noneMatch(Alternative::chosen)) {
            weighing.reasons(first).forEach(f -> line("    %s", said(f.message(), f.remedy(Locale.ENGLISH))));
        }
        List<Alternative> shown = first.alternatives().stream().limit(MOST_ALTERNATIVES).toList();
        shown.forEach(a -> lines.add(row(a)));
        first.alternatives().stream().skip(MOST_ALTERNATIVES).filter(Alternative::chosen).forEach(a -> lines.add(row(a)));
        passedOver(first);
    }

    private static String said(String message, String more) {
        return more.isEmpty() ? message : message + " " + more;
    }

    private static String what(List<Feature> features) {
        List<String> texts = features.stream().map(Texts::describe).distinct().toList();
        return texts.size() <= 3 ? String.join(" with ", texts) : texts.getFirst() + " with " + (texts.size() - 1) + " others";
    }

    private String row(Alternative a) {
        String tools = a.tools().stream().map(Tool::name).distinct().collect(Collectors.joining(" + "));
        return String.format(Locale.ROOT, "  %s %-42s %5d %8.2f %9.4f %7.0f %9.5f  %s", a.chosen() ? ">" : " ", cut(tools, 42), a
                .hits(), a.seconds(), weighing.money(a.costSeconds()), a.forcePercent(), a.wear(), a.why()).stripTrailing();
    }

    /** Tools refused or dearer, each kind of reason with its tools; those that simply do not fit are counted. */
    private void passedOver(FeatureWays w) {
        Map<String, List<Finding>> byReason = new LinkedHashMap<>();
        w.passedOver().forEach(f -> byReason.computeIfAbsent(f.code(), k -> new ArrayList<>()).add(f));
        byReason.forEach((code, list) -> {
            Finding f = list.getFirst();
            if (f.reason() == ToolingReason.DOES_NOT_FIT) {
                line("    %d tools have no way to make it", list.size());
            } else {
                String said = said(f.message(), f.nearest(Locale.ENGLISH));
                line("    passed over: %s: %s%s", f.subject(), said, list.size() > 1 ? " (and " + (list.size() - 1)
                        + " more tools: " + list.stream().skip(1).limit(4).map(Finding::subject).collect(Collectors.joining(", "))
                        + (list.size() > 5 ? ", ..." : "") + ")" : "");
            }
        });
    }

    private static String cut(String text, int width) {
        return text.length() <= width ? text : text.substring(0, width - 1) + "\u2026";
    }

    private void line(String format, Object... values) {
        lines.add(String.format(Locale.ROOT, format, values).stripTrailing());
    }
}
