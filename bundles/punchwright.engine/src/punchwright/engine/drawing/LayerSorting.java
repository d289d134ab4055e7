// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import punchwright.engine.drawing.dxf.DrawnCurve;
import punchwright.engine.drawing.dxf.DrawnNote;
import punchwright.engine.drawing.dxf.RawDrawing;
import punchwright.engine.finding.FindingCollector;

/**
 * Sorts the curves of a drawing into those that are cut and the others, with a count of each layer left out. Takes the curves
 * out of the raw drawing, so that a large one does not lie in memory twice.
 */
final class LayerSorting {

    /** A curve that is not cut, with what it stands for. */
    record Uncut(SeenStyle style, DrawnCurve curve) {
    }

    private final int total;
    private final DrawingOptions options;
    private final SeenStyles styles;
    private final List<DrawnCurve> cut = new ArrayList<>();
    private final List<Uncut> uncut = new ArrayList<>();
    private final Map<String, Integer> hidden = new TreeMap<>();
    private final Map<String, Integer> notCut = new TreeMap<>();
    private final Map<String, Integer> filled = new TreeMap<>();

    LayerSorting(RawDrawing raw, DrawingOptions options) {
        this.total = raw.curves().size();
        this.options = options;
        this.styles = new SeenStyles(raw.layers(), options.layerRules());
        List<DrawnCurve> curves = raw.curves();
        for (int i = 0; i < total; i++) {
            sort(curves.get(i));
            curves.set(i, null);
        }
    }

    private void sort(DrawnCurve curve) {
        SeenStyle style = styles.of(curve.style());
        if (style.state() != LayerState.SHOWN && !options.hiddenLayers()) {
            hidden.merge(style.layer(), 1, Integer::sum);
        } else if (curve.filled() && !options.filledAreasCut()) {
            filled.merge(style.layer(), 1, Integer::sum);
        } else if (style.meaning() != LayerMeaning.CUT) {
            notCut.merge(style.layer() + " = " + style.meaning().name().toLowerCase(Locale.ROOT).replace('_', ' '), 1,
                    Integer::sum);
        } else {
            cut.add(curve);
            return;
        }
        uncut.add(new Uncut(style, curve));
    }

    SeenStyles styles() {
        return styles;
    }

    List<DrawnCurve> cut() {
        return cut;
    }

    List<Uncut> uncut() {
        return uncut;
    }

    /** Whether a text or point is read. */
    boolean isRead(DrawnNote note) {
        return options.hiddenLayers() || styles.of(note.style()).state() == LayerState.SHOWN;
    }

    /** Layers hidden or not cut, with their number of curves. */
    String leftOut() {
        return List.of(list(hidden), list(notCut), list(filled)).stream().filter(s -> !s.isEmpty())
                .collect(Collectors.joining(", "));
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
        if (!filled.isEmpty()) {
            findings.add(DrawingReason.FILLED_AREAS, filled.values().stream().mapToInt(Integer::intValue).sum(), list(filled));
        }
    }

    private static String list(Map<String, Integer> counts) {
        return counts.entrySet().stream().limit(20).map(e -> e.getKey() + " (" + e.getValue() + ")")
                .collect(Collectors.joining(", "));
    }
}
