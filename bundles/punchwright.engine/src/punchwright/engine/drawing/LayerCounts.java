// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Segment;

/** Counts the curves of each layer in each look. */
final class LayerCounts {

    private static final class Count {
        private int curves;
        private double lengthMm;
        private int filledAreas;
    }

    private final Map<SeenStyle, Count> counts = new LinkedHashMap<>();
    private SeenStyle last;
    private Count lastCount;

    void add(SeenStyle style, List<Segment> segments) {
        Count count = of(style);
        count.curves++;
        for (Segment s : segments) {
            count.lengthMm += s.lengthMm();
        }
    }

    void addFilledArea(SeenStyle style) {
        of(style).filledAreas++;
    }

    private Count of(SeenStyle style) {
        if (style != last) {
            last = style;
            lastCount = counts.computeIfAbsent(style, s -> new Count());
        }
        return lastCount;
    }

    /** Every look of every layer that has curves, by layer, colour, line type and state. */
    List<LayerUse> uses() {
        return counts.entrySet().stream().map(e -> use(e.getKey(), e.getValue())).sorted(Comparator.comparing(LayerUse::layer)
                .thenComparing(LayerUse::colour).thenComparing(LayerUse::lineType).thenComparing(LayerUse::state)).toList();
    }

    private static LayerUse use(SeenStyle s, Count c) {
        return new LayerUse(s.layer(), s.colour(), s.lineType(), s.state(), c.curves, s.meaning(), c.lengthMm, c.filledAreas);
    }
}
