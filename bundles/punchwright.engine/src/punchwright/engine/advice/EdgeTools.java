// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.OutlineDetail;
import punchwright.engine.geometry.Line;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;
import punchwright.engine.press.SmallestFeature;
import punchwright.engine.tooling.FeatureWays;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolSize;
import punchwright.engine.tooling.ToolingRules;

/**
 * Tools for edges: slitting and rectangular tools of the lengths that cut a straight edge in one, two or three hits, the longest
 * that a place takes, rectangles of a notch's size, and corner-radius tools of the radii found.
 */
final class EdgeTools {

    private static final int MOST_HITS = 3;
    /** Shorter edges are left to the tools of their notch. */
    private static final double LEAST_EDGE_MM = 12;
    /** Up to here lengths go by 1 mm, above by 5 mm: a longer tool cuts the shorter edge as well. */
    private static final double FINE_MM = 40;
    /** From this length a narrow tool is called a slitting tool. Common practice, no source. */
    private static final double SLITTING_MM = 40;
    /** Usual width of a slitting tool, mm. Common practice, no source. */
    private static final double USUAL_WIDTH_MM = 5;

    private final Drafts drafts;
    private final ToolingRules rules;

    EdgeTools(Drafts drafts, ToolingRules rules) {
        this.drafts = drafts;
        this.rules = rules;
    }

    void add(FeatureWays ways, BookPart part, Machine machine) {
        int hits = ways.alternatives().stream().filter(a -> a.chosen()).mapToInt(a -> a.hits()).findFirst()
                .orElse(Integer.MAX_VALUE);
        if (hits <= ways.features().size()) {
            return;
        }
        Set<Double> lengths = new TreeSet<>();
        for (Feature f : ways.features()) {
            f.path().stream().filter(Line.class::isInstance).mapToDouble(s -> s.lengthMm()).filter(s -> s >= LEAST_EDGE_MM)
                    .forEach(s -> lengths.addAll(lengths(s, hits)));
        }
        for (double width : widths(part)) {
            double most = longest(machine, width);
            lengths.stream().filter(l -> l <= most && l > width).forEach(l -> slitting(l, width, part, machine));
            slitting(most, width, part, machine);
        }
    }

    private void slitting(double length, double width, BookPart part, Machine machine) {
        drafts.add(ToolSize.plain(length >= SLITTING_MM ? ToolShape.SLITTING : ToolShape.RECTANGLE, length, width, 0, 0), part,
                machine);
    }

    /** Lengths that cut the edge in one hit, two, three, but in fewer than today. */
    private Set<Double> lengths(double edge, int hitsToday) {
        Set<Double> all = new TreeSet<>();
        for (int n = 1; n <= Math.min(MOST_HITS, hitsToday - 1); n++) {
            double least = (edge + (n + 1) * rules.overlapMm()) / n;
            all.add(least <= FINE_MM ? Math.ceil(least) : 5 * Math.ceil(least / 5));
        }
        return all;
    }

    /** The usual width, and the least that the sheet allows where that is less. */
    private static Set<Double> widths(BookPart part) {
        double least = Math.ceil(Math.max(3, SmallestFeature.byCustomMm(part.demand().material(), part.demand().thicknessMm())));
        return new TreeSet<>(List.of(least, Math.max(least, USUAL_WIDTH_MM)));
    }

    /** Longest rectangle of a width that the machine's largest place takes, whole mm. */
    private static double longest(Machine machine, double width) {
        double d = machine.places().stream().mapToDouble(Place::maxToolDiameterMm).max().orElse(0);
        return d <= width ? 0 : Math.floor(Math.sqrt(d * d - width * width) - 1e-6);
    }

    /** Notches and rounded corners of the outline. */
    void addDetails(BookPart part, Machine machine) {
        for (OutlineDetail d : part.features().details()) {
            double over = rules.overlapMm();
            switch (d.kind()) {
                case CORNER_RADIUS -> drafts.add(ToolSize.plain(ToolShape.CORNER_RADIUS, 2 * d.radiusMm(), 2 * d.radiusMm(),
                        d.radiusMm(), 0), part, machine);
                case CORNER_NOTCH -> rectangle(Math.ceil(d.lengthMm() + over), Math.ceil(d.depthMm() + over), part, machine);
                case EDGE_NOTCH -> rectangle(d.lengthMm(), Math.ceil(d.depthMm() + over), part, machine);
                default -> {
                    // a chamfer is cut by any slitting tool
                }
            }
        }
    }

    private void rectangle(double a, double b, BookPart part, Machine machine) {
        drafts.add(ToolSize.sides(a, b), part, machine);
    }
}
