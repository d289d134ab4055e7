// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.drawing.LayerMeaning;
import punchwright.engine.drawing.LayerState;
import punchwright.engine.drawing.LayerUse;

/** What lies in a drawing and is not cut, counted by what it is: bend lines, centre lines, marks, forms, hidden layers. */
final class NotCutRecord {

    private static final List<String> CENTRE_LINES = List.of("CENTER", "CENTRE", "MITTE");

    private static final class Count {
        private int entities;
        private double lengthMm;
    }

    private NotCutRecord() {
    }

    static Map<String, Object> of(DrawingResult made) {
        Map<String, Count> counts = new TreeMap<>();
        int filled = 0;
        for (LayerUse use : made.layers()) {
            filled += use.filledAreas();
            String kind = kind(use);
            if (!kind.isEmpty() && use.curves() > 0) {
                Count count = counts.computeIfAbsent(kind, k -> new Count());
                count.entities += use.curves();
                count.lengthMm += use.lengthMm();
            }
        }
        Map<String, Object> record = DrawingRecord.named();
        counts.forEach((kind, c) -> record.put(kind, DrawingRecord.named("entities", c.entities, "lengthMm", c.lengthMm)));
        if (filled > 0) {
            record.put("filledArea", DrawingRecord.named("entities", filled));
        }
        return record;
    }

    /** A hidden line counts as hidden whatever it means. */
    private static String kind(LayerUse use) {
        if (use.state() != LayerState.SHOWN) {
            return DrawingRecord.lower(use.state());
        }
        return switch (use.meaning()) {
            case CUT -> "";
            case MARK -> "mark";
            case FORM_UP -> "formUp";
            case FORM_DOWN -> "formDown";
            case BEND_LINE -> "bendLine";
            case IGNORE -> isCentreLine(use) ? "centreLine" : "ignored";
        };
    }

    private static boolean isCentreLine(LayerUse use) {
        String names = (use.layer() + " " + use.lineType()).toUpperCase(java.util.Locale.ROOT);
        return use.meaning() == LayerMeaning.IGNORE && CENTRE_LINES.stream().anyMatch(names::contains);
    }
}
