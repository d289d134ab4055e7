// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.operations;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import punchwright.engine.drawing.DrawingException;
import punchwright.engine.drawing.DrawingOptions;
import punchwright.engine.drawing.DrawingReader;
import punchwright.engine.drawing.DrawingResult;
import punchwright.engine.drawing.LayerMeaning;
import punchwright.engine.drawing.LayerRule;
import punchwright.engine.drawing.LayerRules;
import punchwright.engine.drawing.LayerState;

/**
 * One drawing read in the ways that its record compares.
 *
 * @param toBeMade   by the layer rules of the workspace, without one by the usual ones
 * @param everything every layer cut, hidden ones too
 * @param visible    every layer cut but those that are off or frozen; empty when no curve lies on such a layer
 */
record DrawingReadings(String file, DrawingResult toBeMade, DrawingResult everything, Optional<DrawingResult> visible) {

    /** @throws DrawingException when the file cannot be read as a drawing at all */
    static DrawingReadings survey(Path file, DrawingOptions options) throws DrawingException {
        return of(file, DrawingReader.survey(file, options));
    }

    /** @param toBeMade the file as it was read before */
    static DrawingReadings of(Path file, DrawingResult toBeMade) throws DrawingException {
        DrawingResult everything = DrawingReader.survey(file, DrawingOptions.EVERYTHING);
        Set<String> hidden = toBeMade.layers().stream().filter(l -> l.curves() > 0)
                .filter(l -> l.state() == LayerState.OFF || l.state() == LayerState.FROZEN).map(l -> l.layer())
                .collect(Collectors.toCollection(java.util.TreeSet::new));
        return new DrawingReadings(file.toString(), toBeMade, everything,
                hidden.isEmpty() ? Optional.empty() : Optional.of(DrawingReader.survey(file, without(hidden))));
    }

    private static DrawingOptions without(Set<String> layers) {
        List<LayerRule> ignored = layers.stream().map(l -> LayerRule.forLayer(l, LayerMeaning.IGNORE)).toList();
        return DrawingOptions.EVERYTHING.withLayerRules(new LayerRules(ignored, LayerMeaning.CUT));
    }
}
