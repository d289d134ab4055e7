// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureRecognition;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.feature.OutlineDetail;
import punchwright.engine.feature.Pattern;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Shape;

/** A part of a drawing with its features as names and values; lengths in mm, angles in degrees. */
final class PartRecord {

    private PartRecord() {
    }

    static Map<String, Object> of(String name, Shape shape) {
        FeatureSet set = FeatureRecognition.recognise(name, shape);
        Bounds b = shape.bounds();
        Map<Integer, Integer> patternOf = new HashMap<>();
        List<Map<String, Object>> patterns = new ArrayList<>();
        for (Pattern p : set.patterns()) {
            int number = patterns.size() + 1;
            p.features().forEach(f -> patternOf.put(f, number));
            patterns.add(pattern(number, p));
        }
        return DrawingRecord.named("lengthMm", b.width(), "widthMm", b.height(), "areaMm2", shape.areaMm2(), "cutLengthMm",
                shape.cutLengthMm(), "features", set.features().stream().map(f -> feature(f, patternOf.get(f.number()))).toList(),
                "patterns", patterns, "outlineDetails", set.details().stream().map(PartRecord::detail).toList());
    }

    private static Map<String, Object> feature(Feature f, Integer pattern) {
        Map<String, Object> feature = DrawingRecord.named("number", f.number(), "kind", DrawingRecord.lower(f.kind()), "x",
                f.center().x(),
                "y", f.center().y(), "angleDeg", f.angleDeg(), "lengthMm", f.lengthMm(), "widthMm", f.widthMm(), "cornerRadiusMm",
                f.cornerRadiusMm());
        if (pattern != null) {
            feature.put("pattern", pattern);
        }
        return feature;
    }

    private static Map<String, Object> pattern(int number, Pattern p) {
        return DrawingRecord.named("number", number, "kind", DrawingRecord.lower(p.kind()), "features", p.features(), "x",
                p.origin().x(),
                "y", p.origin().y(), "angleDeg", p.angleDeg(), "pitchMm", p.pitchMm(), "rowPitchMm", p.rowPitchMm(), "columns",
                p.columns(), "rows", p.rows());
    }

    private static Map<String, Object> detail(OutlineDetail d) {
        return DrawingRecord.named("kind", DrawingRecord.lower(d.kind()), "edges", d.edges(), "x", d.place().x(), "y",
                d.place().y(), "lengthMm", d.lengthMm(), "depthMm", d.depthMm(), "radiusMm", d.radiusMm());
    }
}
