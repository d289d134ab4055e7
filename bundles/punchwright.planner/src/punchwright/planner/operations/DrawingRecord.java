// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.drawing.DrawnMeasure;
import punchwright.engine.drawing.LayerState;
import punchwright.engine.drawing.LayerUse;
import punchwright.engine.drawing.UnitChoice;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.Severity;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;

/**
 * What a drawing shows as names and values. The figures at the top are those as drawn, before repairs, over every layer, also
 * those that are off, frozen or not to be made; {@code afterRepairs} counts the same after repairs, {@code toBeMade} what the
 * layer rules leave, and the parts are made of that. The names are described in the schema of the batch program.
 */
final class DrawingRecord {

    private DrawingRecord() {
    }

    /** @param why what refused the drawing, when it gives no part; else empty */
    static Map<String, Object> of(DrawingReadings readings, List<Finding> why) {
        DrawingResult everything = readings.everything();
        DrawingResult made = readings.toBeMade();
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("file", readings.file());
        record.put("acadVersion", everything.acadVersion());
        record.put("mmPerUnit", everything.mmPerUnit());
        record.put("unit", unit(everything.unit()));
        record.put("entities", everything.entities());
        record.putAll(asDrawn(everything.drawn()));
        record.put("afterRepairs", afterRepairs(everything));
        record.put("toBeMade", afterRepairs(made));
        readings.visible().ifPresent(v -> record.put("visibleLayersOnly", visible(v)));
        record.put("layers", layers(made.layers()));
        record.put("notCut", NotCutRecord.of(made));
        record.put("parts", parts(readings.file(), made));
        record.put("texts", made.texts().stream()
                .map(t -> named("text", t.text(), "x", t.place().x(), "y", t.place().y(), "heightMm",
                t.heightMm(), "angleDeg", t.angleDeg(), "layer", t.layer())).toList());
        record.put("centreMarks", made.centreMarks().stream().map(c -> named("x", c.place().x(), "y", c.place().y(), "layer",
                c.layer())).toList());
        record.put("repairs", findings(made.findings(), true));
        Set<Finding> noticed = new LinkedHashSet<>(why);
        noticed.addAll(made.findings());
        record.put("findings", findings(List.copyOf(noticed), false));
        return record;
    }

    /** A file that gave no drawing. */
    static Map<String, Object> refused(String file, List<Finding> why) {
        return named("file", file, "findings", findings(why, false));
    }

    /** A map in the order given: name, value, name, value. */
    static Map<String, Object> named(Object... namesAndValues) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            map.put((String) namesAndValues[i], namesAndValues[i + 1]);
        }
        return map;
    }

    private static Map<String, Object> unit(UnitChoice u) {
        return named("source", lower(u.source()), "ground", lower(u.ground()), "doubtful", u.isDoubtful(), "widthUnits",
                u.widthUnits(), "heightUnits", u.heightUnits());
    }

    static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static Map<String, Object> asDrawn(DrawnMeasure d) {
        return named("closedLoops", d.closedLoops(), "openChains", d.openChains(), "circleDiametersMm",
                d.circleDiametersMm(), "areaMm2", d.areaMm2(), "cutLengthMm", d.cutLengthMm());
    }

    private static Map<String, Object> afterRepairs(DrawingResult d) {
        return named("closedLoops", d.loops().size(), "openChains", d.openChains().size(), "circleDiametersMm",
                d.circleDiametersMm(), "areaMm2", d.areaMm2(), "cutLengthMm", d.cutLengthMm());
    }

    private static Map<String, Object> visible(DrawingResult d) {
        List<LayerUse> shown = d.layers().stream().filter(l -> l.meaning() == punchwright.engine.drawing.LayerMeaning.CUT)
                .toList();
        return named("cutEntities", shown.stream().mapToInt(LayerUse::curves).sum(), "cutLengthMm",
                shown.stream().mapToDouble(LayerUse::lengthMm).sum(), "closedLoops", d.drawn().closedLoops());
    }

    private static Map<String, Object> layers(List<LayerUse> uses) {
        Map<String, List<LayerUse>> byName = new TreeMap<>();
        uses.stream().filter(u -> u.curves() > 0).forEach(u -> byName.computeIfAbsent(u.layer(), n -> new ArrayList<>()).add(u));
        Map<String, Object> layers = new LinkedHashMap<>();
        byName.forEach((name, looks) -> layers.put(name, layer(looks)));
        return layers;
    }

    /** A layer whose curves differ in look counts under the meaning that most of them have. */
    private static Map<String, Object> layer(List<LayerUse> looks) {
        LayerUse most = looks.stream().reduce((a, b) -> b.curves() > a.curves() ? b : a).orElseThrow();
        LayerState state = looks.stream().map(LayerUse::state).filter(s -> s != LayerState.INVISIBLE).findFirst()
                .orElse(LayerState.SHOWN);
        return named("state", lower(state), "meaning", lower(most.meaning()), "cutEntities",
                looks.stream().mapToInt(LayerUse::curves).sum(), "cutLengthMm", looks.stream()
                .mapToDouble(LayerUse::lengthMm).sum());
    }

    private static List<Map<String, Object>> parts(String file, DrawingResult d) {
        List<Map<String, Object>> parts = new ArrayList<>();
        for (Shape shape : d.shapes()) {
            parts.add(PartRecord.of(file + "#" + (parts.size() + 1), shape));
        }
        return parts;
    }

    /** Notes are repairs and guesses; errors and warnings are findings. */
    private static List<Map<String, Object>> findings(List<Finding> all, boolean repairs) {
        return all.stream().filter(f -> f.severity() == Severity.NOTE == repairs).map(DrawingRecord::finding).toList();
    }

    private static Map<String, Object> finding(Finding f) {
        Map<String, Object> finding = named("code", f.code(), "severity", lower(f.severity()), "message", f.message(), "remedy",
                f.remedy());
        f.placeIfAny().ifPresent(p -> place(p, finding));
        return finding;
    }

    private static void place(Point p, Map<String, Object> into) {
        into.put("x", p.x());
        into.put("y", p.y());
    }
}
