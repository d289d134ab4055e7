// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import punchwright.engine.drawing.dxf.DrawnCurve;
import punchwright.engine.drawing.dxf.Layer;
import punchwright.engine.drawing.dxf.RawDrawing;
import punchwright.engine.drawing.dxf.Style;
import punchwright.engine.finding.FindingCollector;

/**
 * Sorts the curves of a drawing by meaning and leaves out hidden ones, with a count of each layer left out. Takes the curves
 * out of the raw drawing, so that a large one does not lie in memory twice.
 */
final class LayerSorting {

    private static final int WHITE = 7;

    private final Map<String, Layer> layers;
    private final int total;
    private final DrawingOptions options;
    private final Map<Style, Look> known = new HashMap<>();
    private final List<DrawnCurve> cut = new ArrayList<>();
    private final Map<LayerMeaning, List<DrawnCurve>> others = new TreeMap<>();
    private final Map<String, Integer> hidden = new TreeMap<>();
    private final Map<String, Integer> notCut = new TreeMap<>();

    LayerSorting(RawDrawing raw, DrawingOptions options) {
        this.layers = raw.layers();
        this.total = raw.curves().size();
        this.options = options;
        List<DrawnCurve> curves = raw.curves();
        for (int i = 0; i < total; i++) {
            sort(curves.get(i));
            curves.set(i, null);
        }
    }

    /** One look of one layer, counted. */
    private static final class Look {
        private final LayerUse use;
        private int curves;

        Look(LayerUse use) {
            this.use = use;
        }
    }

    private void sort(DrawnCurve curve) {
        Style style = curve.style();
        Look look = known.computeIfAbsent(style, this::look);
        look.curves++;
        if (!options.hiddenLayers() && look.use.hidden()) {
            hidden.merge(style.layer(), 1, Integer::sum);
            return;
        }
        LayerMeaning meaning = look.use.meaning();
        if (meaning == LayerMeaning.CUT) {
            cut.add(curve);
        } else {
            notCut.merge(style.layer() + " = " + meaning.name().toLowerCase(Locale.ROOT).replace('_', ' '), 1, Integer::sum);
            others.computeIfAbsent(meaning, m -> new ArrayList<>()).add(curve);
        }
    }

    private Layer layer(Style style) {
        return layers.get(style.layer().toUpperCase(Locale.ROOT));
    }

    private boolean isHidden(Style style) {
        Layer layer = layer(style);
        return style.hidden() || layer != null && layer.hidden();
    }

    private Look look(Style style) {
        Layer layer = layer(style);
        boolean byLayer = style.colour() == Style.BY_LAYER || style.colour() == Style.BY_BLOCK;
        int drawn = byLayer ? layer == null ? WHITE : layer.colour() : style.colour();
        int colour = Math.max(1, Math.min(255, Math.abs(drawn)));
        String lineType = style.lineType().startsWith("BY") ? layer == null ? "CONTINUOUS" : layer.lineType() : style.lineType();
        return new Look(new LayerUse(style.layer(), colour, lineType, isHidden(style), 1,
                options.layerRules().meaning(style.layer(), lineType, colour)));
    }

    /** Every look of every layer that has curves, by layer, colour and line type. */
    List<LayerUse> uses() {
        Map<LayerUse, Integer> counts = new LinkedHashMap<>();
        known.values().forEach(l -> counts.merge(l.use, l.curves, Integer::sum));
        return counts.entrySet().stream().map(e -> {
            LayerUse u = e.getKey();
            return new LayerUse(u.layer(), u.colour(), u.lineType(), u.hidden(), e.getValue(), u.meaning());
        }).sorted(Comparator.comparing(LayerUse::layer).thenComparing(LayerUse::colour).thenComparing(LayerUse::lineType)
                .thenComparing(LayerUse::hidden)).toList();
    }

    List<DrawnCurve> cut() {
        return cut;
    }

    Map<LayerMeaning, List<DrawnCurve>> others() {
        return others;
    }

    /** Layers hidden or not cut, with their number of curves. */
    String leftOut() {
        return list(hidden) + (hidden.isEmpty() || notCut.isEmpty() ? "" : ", ") + list(notCut);
    }

    int leftOutCurves() {
        return total - cut.size();
    }

    void report(FindingCollector findings) {
        if (!hidden.isEmpty()) {
            findings.add(DrawingReason.HIDDEN_LAYERS, list(hidden));
        }
        if (!notCut.isEmpty()) {
            findings.add(DrawingReason.LAYERS_NOT_CUT, list(notCut));
        }
    }

    private static String list(Map<String, Integer> counts) {
        return counts.entrySet().stream().limit(20).map(e -> e.getKey() + " (" + e.getValue() + ")")
                .collect(Collectors.joining(", "));
    }
}
