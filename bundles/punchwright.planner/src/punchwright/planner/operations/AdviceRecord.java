// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.advice.Addition;
import punchwright.engine.advice.Advice;
import punchwright.engine.advice.MadePossible;
import punchwright.engine.advice.OrderToday;
import punchwright.engine.advice.PartSaving;
import punchwright.engine.advice.Recommendation;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.WayOut;

/** An advice as names and values: one record for the order book, then one for each row of both lists. */
final class AdviceRecord {

    private AdviceRecord() {
    }

    static List<Map<String, Object>> of(Advice advice, String currency, List<Finding> findings) {
        List<Map<String, Object>> all = new ArrayList<>();
        Map<String, Object> book = new LinkedHashMap<>();
        book.put("record", "book");
        book.put("currency", currency);
        book.put("perYear", advice.perYear());
        book.put("additions", advice.additions());
        book.put("workedOut", advice.workedOut());
        book.put("choices", advice.choices());
        book.put("orders", advice.today().stream().map(AdviceRecord::order).toList());
        book.put("findings", findings.stream().map(AdviceRecord::finding).toList());
        all.add(book);
        advice.ranking().forEach(r -> all.add(row("saving", r)));
        advice.enabling().forEach(r -> all.add(row("enabling", r)));
        return all;
    }

    private static Map<String, Object> order(OrderToday o) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("order", o.order());
        m.put("machine", o.machine());
        m.put("perYear", o.perYear());
        m.put("partsMade", o.partsMade());
        m.put("parts", o.parts());
        m.put("refusals", o.refusals().stream().map(AdviceRecord::finding).toList());
        return m;
    }

    private static Map<String, Object> row(String list, Recommendation r) {
        Addition a = r.addition();
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("record", list);
        m.put("rank", r.rank());
        m.put("kind", a.kind().name().toLowerCase(Locale.ROOT));
        m.put("id", a.id());
        m.put("name", a.name());
        m.put("for", a.why());
        m.put("price", a.price().value());
        m.put("priceBasis", a.price().basis().name().toLowerCase(Locale.ROOT));
        m.put("priceHow", a.price().how());
        m.put("savesPerYear", r.saving().perYear());
        m.put("pressHoursPerYear", r.saving().pressHours());
        m.put("pressPerYear", r.saving().press());
        m.put("wearPerYear", r.saving().wear());
        m.put("setUpsPerYear", r.saving().setUps());
        m.put("restPerYear", r.saving().rest());
        m.put("depreciationPerYear", r.saving().depreciation());
        m.put("paybackYears", Double.isInfinite(r.paybackYears()) ? null : r.paybackYears());
        m.put("mostPerYear", r.mostPerYear());
        m.put("parts", r.parts().stream().map(AdviceRecord::part).toList());
        m.put("makesPossible", r.makesPossible().stream().map(AdviceRecord::possible).toList());
        return m;
    }

    private static Map<String, Object> part(PartSaving p) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("order", p.order());
        m.put("part", p.part());
        m.put("machineNow", p.machineNow());
        m.put("machineThen", p.machineThen());
        m.put("hitsNow", p.hitsNow());
        m.put("hitsThen", p.hitsThen());
        m.put("savesPerYear", p.perYear());
        return m;
    }

    private static Map<String, Object> possible(MadePossible p) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("order", p.order());
        m.put("machine", p.machine());
        m.put("part", p.part());
        m.put("whole", p.whole());
        m.put("nowhereToday", p.nowhere());
        m.put("today", finding(p.today()));
        return m;
    }

    static Map<String, Object> finding(Finding f) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("code", f.code());
        m.put("severity", f.severity().name().toLowerCase(Locale.ROOT));
        m.put("subject", f.subject());
        m.put("message", f.message());
        m.put("remedy", f.remedy());
        m.put("waysOut", f.waysOut().stream().map(AdviceRecord::way).toList());
        return m;
    }

    private static Map<String, Object> way(WayOut w) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("kind", w.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        m.put("value", w.value());
        m.put("id", w.id());
        m.put("name", w.name());
        m.put("values", w.values());
        m.put("and", w.and().stream().map(AdviceRecord::way).toList());
        m.put("text", w.text(Locale.ENGLISH));
        return m;
    }
}
