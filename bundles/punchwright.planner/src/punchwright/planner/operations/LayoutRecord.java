// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingCost;
import punchwright.engine.nesting.Placement;
import punchwright.engine.nesting.Remnant;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.planning.SheetLayouts;
import punchwright.planner.convert.StockReader;
import punchwright.planner.layouts.KeptWriter;
import punchwright.planner.layouts.LayoutLine;
import punchwright.planner.layouts.OrderLayouts;

/** Layouts as names and values, one record a machine; described by layout-record.schema.json. */
final class LayoutRecord {

    private LayoutRecord() {
    }

    static Map<String, Object> of(String order, OrderLayouts.Result result, String currency) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("order", order);
        m.put("machine", result.machine().getId());
        m.put("currency", currency);
        m.put("complete", result.complete());
        m.put("sheets", result.sheets().stream().filter(s -> s.job() != null).map(s -> sheets(result, s)).toList());
        m.put("findings", result.findings().stream().map(AdviceRecord::finding).toList());
        return m;
    }

    private static Map<String, Object> sheets(OrderLayouts.Result result, SheetLayouts s) {
        Nesting n = s.nesting();
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("material", s.material().id());
        m.put("thicknessMm", s.thicknessMm());
        m.put("webMm", KeptWriter.webMm(s));
        m.put("websMm", s.websMm());
        m.put("edgeMm", s.job().margins().edgeMm());
        m.put("clampStripMm", s.job().margins().clampStripMm());
        m.put("utilisationPercent", 100 * n.utilisation());
        m.put("areaMm2", n.sheetMm2());
        m.put("boundMm2", n.boundMm2());
        m.put("areaGapPercent", 100 * n.areaGap());
        m.put("cost", cost(n.cost()));
        m.put("boundCost", n.boundCost());
        m.put("costGapPercent", 100 * n.costGap());
        List<Map<String, Object>> stock = new ArrayList<>();
        LayoutTable.stock(n).forEach((sheet, used) -> stock.add(stock(sheet, used)));
        m.put("stock", stock);
        m.put("layouts", LayoutLine.of(s.job(), n.layouts()).stream().map(l -> layout(result, l)).toList());
        return m;
    }

    private static Map<String, Object> stock(SheetOffer sheet, int used) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("stock", sheet.id());
        m.put("used", used);
        m.put("orderable", sheet.quantity() >= StockReader.AS_MANY_AS_NEEDED);
        m.put("price", sheet.price());
        return m;
    }

    private static Map<String, Object> layout(OrderLayouts.Result result, LayoutLine l) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("number", l.number());
        m.put("stock", l.layout().sheet().id());
        m.put("lengthMm", l.layout().sheet().lengthMm());
        m.put("widthMm", l.layout().sheet().widthMm());
        m.put("runs", l.layout().runs());
        m.put("utilisationPercent", 100 * l.utilisation());
        m.put("cost", cost(l.cost()));
        List<Map<String, Object>> pieces = new ArrayList<>();
        l.layout().placements().forEach(p -> pieces.add(piece(result, p)));
        m.put("pieces", pieces);
        m.put("remnants", l.remnants().stream().map(LayoutRecord::remnant).toList());
        return m;
    }

    private static Map<String, Object> piece(OrderLayouts.Result result, Placement p) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("part", LayoutTable.label(result, p.partId()));
        m.put("xMm", p.pose().x());
        m.put("yMm", p.pose().y());
        m.put("angleDeg", p.pose().angleDeg());
        return m;
    }

    private static Map<String, Object> remnant(Remnant r) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("xMm", r.xMm());
        m.put("yMm", r.yMm());
        m.put("lengthMm", r.lengthMm());
        m.put("widthMm", r.widthMm());
        m.put("value", r.value());
        return m;
    }

    private static Map<String, Object> cost(NestingCost c) {
        Map<String, Object> m = new LinkedHashMap<>();
        m.put("material", c.material());
        m.put("remnants", c.remnants());
        m.put("scrap", c.scrap());
        m.put("handling", c.handling());
        m.put("machine", c.machine());
        m.put("total", c.total());
        return m;
    }
}
