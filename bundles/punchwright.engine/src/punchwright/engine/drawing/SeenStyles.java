// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

import punchwright.engine.drawing.dxf.Layer;
import punchwright.engine.drawing.dxf.Style;

/** Looks up styles in the layer table and asks the rules; each style once. */
final class SeenStyles {

    private static final int WHITE = 7;

    private final Map<String, Layer> layers;
    private final LayerRules rules;
    private final Map<Style, SeenStyle> known = new HashMap<>();
    private Style last;
    private SeenStyle lastSeen;

    SeenStyles(Map<String, Layer> layers, LayerRules rules) {
        this.layers = layers;
        this.rules = rules;
    }

    SeenStyle of(Style style) {
        if (style != last) {
            last = style;
            lastSeen = known.computeIfAbsent(style, this::see);
        }
        return lastSeen;
    }

    private SeenStyle see(Style style) {
        Layer layer = layer(style.layer());
        boolean byLayer = style.colour() == Style.BY_LAYER || style.colour() == Style.BY_BLOCK;
        String lineType = style.lineType().startsWith("BY") ? layer.lineType() : style.lineType();
        LayerState state = state(layer);
        int colour = Math.max(1, Math.min(255, Math.abs(byLayer ? layer.colour() : style.colour())));
        return new SeenStyle(style.layer(), colour, lineType, style.hidden() && state == LayerState.SHOWN
                ? LayerState.INVISIBLE : state, rules.meaning(style.layer(), lineType, colour));
    }

    /** The layer of this name; a plain one where the table does not have it. */
    private Layer layer(String name) {
        Layer layer = layers.get(name.toUpperCase(Locale.ROOT));
        return layer == null ? new Layer(name, WHITE, "CONTINUOUS", false, false) : layer;
    }

    private static LayerState state(Layer layer) {
        return layer.off() ? LayerState.OFF : layer.frozen() ? LayerState.FROZEN : LayerState.SHOWN;
    }
}
