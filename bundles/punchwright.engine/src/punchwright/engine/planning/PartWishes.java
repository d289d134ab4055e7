// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.engine.tooling.ToolWishes;

/**
 * What the engineer wants of the tools of one part. A pin names its feature by kind and place, since numbers change with the
 * drawing.
 *
 * @param forbidden ids of tools not to be used
 * @param pins      tools wanted for a feature
 */
public record PartWishes(Set<String> forbidden, List<Pin> pins) {

    /** No wishes. */
    public static final PartWishes NONE = new PartWishes(Set.of(), List.of());

    /** A feature counts as the one meant when its centre lies this near, mm: below any web, above rounding in a file. */
    private static final double NEAR_MM = 0.1;

    /**
     * A tool wanted for a feature.
     *
     * @param toolId   id of the tool
     * @param toolName what the shop calls it, for messages
     * @param kind     kind of the feature
     * @param at       its centre, part coordinates, mm
     */
    public record Pin(String toolId, String toolName, FeatureKind kind, Point at) {

        private Optional<Feature> in(FeatureSet set) {
            return set.features().stream().filter(f -> f.kind() == kind && f.center().distance(at) <= NEAR_MM)
                    .min(Comparator.comparingDouble(f -> f.center().distance(at)));
        }
    }

    public PartWishes {
        forbidden = Collections.unmodifiableSet(new TreeSet<>(forbidden));
        pins = List.copyOf(pins);
    }

    /** The wishes by feature number; a pin whose feature is not there is left out. */
    public ToolWishes on(FeatureSet set) {
        Map<Integer, String> pinned = new TreeMap<>();
        pins.forEach(pin -> pin.in(set).ifPresent(f -> pinned.put(f.number(), pin.toolId())));
        return new ToolWishes(forbidden, pinned);
    }

    /** A warning for each pin whose feature is not there. */
    public List<Finding> lost(FeatureSet set) {
        List<Finding> findings = new ArrayList<>();
        for (Pin pin : pins) {
            if (pin.in(set).isEmpty()) {
                findings.add(Finding.at(pin.at(), PlanningReason.PIN_LOST, "part " + set.part(), pin.toolName(),
                        pin.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '), pin.at().x(), pin.at().y()));
            }
        }
        return findings;
    }
}
