// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.feature.Feature;
import punchwright.engine.tooling.Alternative;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolWeighing;
import punchwright.planner.convert.Texts;
import punchwright.planner.plans.PartWeighing;

/** A weighing as names and values, one record a machine. */
final class WeighingRecord {

    private WeighingRecord() {
    }

    static Map<String, Object> of(PartWeighing w, String currency) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("part", w.features().part());
        m.put("machine", w.machine().name());
        m.put("currency", currency);
        m.put("made", w.wished().operations().complete());
        m.put("free", total(w, w.free()));
        m.put("wished", total(w, w.wished()));
        m.put("moreSeconds", w.wished().costSeconds() - w.free().costSeconds());
        m.put("moreCost", w.money(w.wished().costSeconds() - w.free().costSeconds()));
        m.put("operations", w.wished().ways().stream().map(ways -> ways(w, ways)).toList());
        m.put("findings", w.findings().stream().map(AdviceRecord::finding).toList());
        return m;
    }

    private static Map<String, Object> total(PartWeighing w, ToolWeighing t) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("made", t.operations().complete());
        m.put("seconds", t.costSeconds());
        m.put("boundSeconds", t.boundSeconds());
        m.put("cost", w.money(t.costSeconds()));
        return m;
    }

    private static Map<String, Object> ways(PartWeighing w, FeatureWays ways) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("features", ways.features().stream().map(WeighingRecord::feature).toList());
        m.put("alternatives", ways.alternatives().stream().map(a -> alternative(w, a)).toList());
        m.put("passedOver", ways.passedOver().stream().map(AdviceRecord::finding).toList());
        return m;
    }

    private static Map<String, Object> feature(Feature f) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("number", f.number());
        m.put("kind", f.kind().name().toLowerCase(Locale.ROOT));
        m.put("text", Texts.describe(f));
        m.put("x", f.center().x());
        m.put("y", f.center().y());
        return m;
    }

    private static Map<String, Object> alternative(PartWeighing w, Alternative a) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("tools", a.tools().stream().map(Tool::id).toList());
        m.put("names", List.copyOf(a.tools().stream().map(Tool::name).toList()));
        m.put("hits", a.hits());
        m.put("seconds", a.seconds());
        m.put("cost", w.money(a.costSeconds()));
        m.put("wear", a.wear());
        m.put("forcePercent", a.forcePercent());
        m.put("reachMm", a.reachMm());
        m.put("chosen", a.chosen());
        m.put("why", a.why());
        return m;
    }
}
