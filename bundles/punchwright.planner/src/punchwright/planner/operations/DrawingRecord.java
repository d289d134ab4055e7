// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureRecognition;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.Severity;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Shape;

/**
 * What a drawing shows as names and values. The figures at the top count every layer, also those that are off, frozen or not to
 * be made; {@code toBeMade} counts what the layer rules leave, and the parts are made of that.
 */
final class DrawingRecord {

    private DrawingRecord() {
    }

    /** @param why what refused the drawing, when it gives no part; else empty */
    static Map<String, Object> of(String file, DrawingResult everything, DrawingResult toBeMade, List<Finding> why) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("file", file);
        record.put("acadVersion", everything.acadVersion());
        record.put("mmPerUnit", everything.mmPerUnit());
        record.put("entities", everything.entities());
        record.putAll(figures(everything));
        record.put("toBeMade", figures(toBeMade));
        record.put("parts", parts(file, toBeMade));
        record.put("repairs", findings(toBeMade.findings(), true));
        Set<Finding> noticed = new LinkedHashSet<>(why);
        noticed.addAll(toBeMade.findings());
        record.put("findings", findings(List.copyOf(noticed), false));
        return record;
    }

    /** A file that gave no drawing. */
    static Map<String, Object> refused(String file, List<Finding> why) {
        Map<String, Object> record = new LinkedHashMap<>();
        record.put("file", file);
        record.put("findings", findings(why, false));
        return record;
    }

    private static Map<String, Object> figures(DrawingResult d) {
        Map<String, Object> figures = new LinkedHashMap<>();
        figures.put("closedLoops", d.loops().size());
        figures.put("openChains", d.openChains().size());
        figures.put("circleDiametersMm", d.circleDiametersMm());
        figures.put("areaMm2", d.areaMm2());
        figures.put("cutLengthMm", d.cutLengthMm());
        return figures;
    }

    private static List<Map<String, Object>> parts(String file, DrawingResult d) {
        List<Map<String, Object>> parts = new ArrayList<>();
        for (Shape shape : d.shapes()) {
            parts.add(part(FeatureRecognition.recognise(file + "#" + (parts.size() + 1), shape)));
        }
        return parts;
    }

    private static Map<String, Object> part(FeatureSet set) {
        Bounds b = set.shape().bounds();
        Map<String, Object> part = new LinkedHashMap<>();
        part.put("lengthMm", b.width());
        part.put("widthMm", b.height());
        part.put("areaMm2", set.shape().areaMm2());
        part.put("cutLengthMm", set.shape().cutLengthMm());
        part.put("features", set.features().stream().map(DrawingRecord::feature).toList());
        return part;
    }

    private static Map<String, Object> feature(Feature f) {
        Map<String, Object> feature = new LinkedHashMap<>();
        feature.put("kind", f.kind().name().toLowerCase(Locale.ROOT));
        feature.put("x", f.center().x());
        feature.put("y", f.center().y());
        feature.put("angleDeg", f.angleDeg());
        feature.put("lengthMm", f.lengthMm());
        feature.put("widthMm", f.widthMm());
        feature.put("cornerRadiusMm", f.cornerRadiusMm());
        return feature;
    }

    /** Notes are repairs and guesses; errors and warnings are findings. */
    private static List<Map<String, Object>> findings(List<Finding> all, boolean repairs) {
        return all.stream().filter(f -> f.severity() == Severity.NOTE == repairs).map(DrawingRecord::finding).toList();
    }

    private static Map<String, Object> finding(Finding f) {
        Map<String, Object> finding = new LinkedHashMap<>();
        finding.put("code", f.code());
        finding.put("severity", f.severity().name().toLowerCase(Locale.ROOT));
        finding.put("message", f.message());
        finding.put("remedy", f.remedy());
        f.placeIfAny().ifPresent(p -> {
            finding.put("x", p.x());
            finding.put("y", p.y());
        });
        return finding;
    }
}
