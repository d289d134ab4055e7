// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.advice;

import java.util.List;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Line;
import punchwright.engine.press.AxisMotion;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Scallop;
import punchwright.engine.press.Times;
import punchwright.engine.tooling.ChoiceWeights;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolCheck;
import punchwright.engine.tooling.ToolShape;
import punchwright.engine.tooling.ToolingJob;

/**
 * The least that any way to make a unit can cost when a given tool takes part in it, s of the machine.
 *
 * <p>Each tool in a way pays one approach, each further hit at least a stroke or a nibbling period. A hit cuts no more of a
 * straight edge than its longest side (round: the chord of the permitted scallop), no more of an opening's sides than two that
 * meet
 * (all around where it is as wide as the opening), and no more of a round opening than the scallop allows. On an edge that lies
 * on the part's bounding box a hit reaches as far out as the tool is wide. The hits along a single straight edge are of one tool
 * and lie no further apart than it is long; the time of a move grows less than its length, so that the longest moves take least
 * a mm. Everything else costs nothing here.
 */
final class LeastCost {

    /** What may stay uncut at the ends of a straight edge or at joints, mm; generous. */
    private static final double SLACK_MM = 3;
    /** Edges of a notch may be made together with the tool though today each is a unit; then they share one approach. */
    private static final int MOST_TOGETHER = 4;

    private final ToolingJob job;
    private final ChoiceWeights weights;
    private final double approachS;
    private final double hitS;
    private final double longestOwnedMm;
    private final List<Tool> cutters;
    private final Bounds box;

    LeastCost(ToolingJob job, ChoiceWeights weights) {
        this.job = job;
        this.weights = weights;
        Machine m = job.machine();
        Times t = m.times();
        approachS = AxisMotion.seconds(m, weights.approachMm(), 0) + t.settlingS() + t.strokeS();
        double single = t.settlingS() + t.strokeS();
        hitS = t.nibblingPerMin() > 0 ? Math.min(60 / t.nibblingPerMin(), single) : single;
        cutters = job.tools().stream().filter(Reach::cutsEdges).toList();
        longestOwnedMm = cutters.stream().mapToDouble(this::straightMm).max().orElse(0);
        box = job.features().shape().bounds();
    }

    /** Infinite when the tool cannot take part. */
    double seconds(List<Feature> unit, Tool tool) {
        if (unit.stream().noneMatch(f -> Reach.meets(tool, f, job.rules()))) {
            return Double.POSITIVE_INFINITY;
        }
        double wear = ToolCheck.wearPerHit(tool, job.material()) * 3600 / weights.ratePerHour();
        Feature first = unit.getFirst();
        if (first.kind() == FeatureKind.FORM) {
            return approachS + wear;
        }
        if (tool.shape() == ToolShape.CLUSTER) {
            return unit.size() * (hitS + wear) / tool.cluster().size();
        }
        return first.isOpening() ? openings(unit, tool, wear) : edges(unit, tool, wear);
    }

    private double openings(List<Feature> unit, Tool tool, double wear) {
        double sum = 0;
        for (Feature f : unit) {
            boolean exact = Reach.sameArea(f, tool, job.rules()) || !Reach.cutsEdges(tool);
            sum += exact ? approachS + wear : opening(f, tool, wear);
        }
        return sum;
    }

    private double opening(Feature f, Tool tool, double wear) {
        double alone = Math.max(2, hits(f, cover(f, tool), step(f, tool)));
        double mixed = Math.max(2, hits(f, Math.max(cover(f, tool), mostOwned(f)), Math.max(step(f, tool), mostStep(f))));
        return Math.min(approachS + (alone - 1) * hitS + alone * wear, 2 * approachS + (mixed - 2) * hitS + wear);
    }

    /** Hits that the straight sides, or the arc of a round opening, need at least. */
    private static double hits(Feature f, double coverMm, double stepRad) {
        if (f.kind() == FeatureKind.ROUND) {
            return stepRad > 0 ? Math.ceil(2 * Math.PI / stepRad - 1e-6) : Double.POSITIVE_INFINITY;
        }
        double straight = f.path().stream().filter(Line.class::isInstance).mapToDouble(s -> Math.max(0, s.lengthMm() - SLACK_MM))
                .sum();
        return straight <= 0 ? 1 : coverMm > 0 ? Math.ceil(straight / coverMm) : Double.POSITIVE_INFINITY;
    }

    /** Most length of an opening's sides that one hit cuts: two that meet, or all around where it is as wide as the opening. */
    private double cover(Feature f, Tool tool) {
        if (tool.shape() == ToolShape.ROUND) {
            return 2 * straightMm(tool);
        }
        if (tool.shape() == ToolShape.CORNER_RADIUS) {
            return 0;
        }
        boolean plain = f.kind() == FeatureKind.RECTANGLE || f.kind() == FeatureKind.SQUARE
                || f.kind() == FeatureKind.ROUNDED_RECTANGLE;
        boolean asWide = !plain || side(f, tool.lengthMm()) || side(f, tool.widthMm());
        return (asWide ? 2 : 1) * (tool.lengthMm() + tool.widthMm());
    }

    private static boolean side(Feature f, double mm) {
        return Math.abs(mm - f.lengthMm()) <= SLACK_MM || Math.abs(mm - f.widthMm()) <= SLACK_MM;
    }

    private double mostOwned(Feature f) {
        return cutters.stream().mapToDouble(t -> cover(f, t)).max().orElse(0);
    }

    /** Most of a round opening's arc that one hit of a round tool cuts, rad; 0 for other tools, a full turn where it fits. */
    private double step(Feature f, Tool tool) {
        double arc = f.lengthMm() / 2;
        double r = tool.lengthMm() / 2;
        if (f.kind() != FeatureKind.ROUND || tool.shape() != ToolShape.ROUND || r > arc + job.rules().sizeToleranceMm()) {
            return 0;
        }
        double h = job.rules().scallopMm() + 0.02;
        return r >= arc - h - 0.1 || r <= h ? 2 * Math.PI : Scallop.insideStepRad(arc, r, h);
    }

    private double mostStep(Feature f) {
        return cutters.stream().mapToDouble(t -> step(f, t)).filter(s -> s < 2 * Math.PI).max().orElse(0);
    }

    private double edges(List<Feature> unit, Tool tool, double wear) {
        double longest = unit.stream().flatMap(f -> f.path().stream()).filter(Line.class::isInstance)
                .mapToDouble(s -> s.lengthMm()).max().orElse(0) - SLACK_MM;
        if (singleLine(unit)) {
            return line((Line) unit.getFirst().path().getFirst(), tool, wear);
        }
        boolean arcsOnly = unit.stream().flatMap(f -> f.path().stream()).allMatch(Arc.class::isInstance);
        double own = straightMm(tool);
        double alone = arcsOnly ? 1 : own > 0 ? Math.max(1, Math.ceil(longest / own)) : Double.POSITIVE_INFINITY;
        double mixed = arcsOnly ? 2 : 1 + Math.max(1, Math.ceil((longest - own) / Math.max(own, longestOwnedMm)));
        double least = Math.min(approachS + (alone - 1) * hitS + alone * wear, 2 * approachS + (mixed - 2) * hitS + wear);
        return unit.size() > 1 ? least : Math.min(least, approachS / MOST_TOGETHER);
    }

    private static boolean singleLine(List<Feature> unit) {
        return unit.size() == 1 && unit.getFirst().path().size() == 1 && unit.getFirst().path().getFirst() instanceof Line;
    }

    /** A single straight edge is cut by one tool from end to end, so that its hits also travel. */
    private double line(Line l, Tool tool, double wear) {
        double own = straightMm(tool);
        double longest = l.lengthMm() - SLACK_MM;
        double hits = own > 0 ? Math.max(1, Math.ceil(longest / own)) : Double.POSITIVE_INFINITY;
        double travel = own > 0 ? Math.max(0, longest - own) * secondsPerMm(l, own + SLACK_MM) : 0;
        double least = approachS + Math.max((hits - 1) * hitS, travel) + hits * wear;
        boolean onTheBox = onTheBox(l);
        return onTheBox ? weights.reachSecondsPerMm() * widthMm(tool) + least : Math.min(least, approachS / MOST_TOGETHER);
    }

    /** Least time a mm of hits no further apart than {@code pitchMm}: nibbled, or the longest single moves. */
    private double secondsPerMm(Line l, double pitchMm) {
        Machine m = job.machine();
        Times t = m.times();
        double dx = Math.abs(l.tangentAt(0).x()) * pitchMm;
        double dy = Math.abs(l.tangentAt(0).y()) * pitchMm;
        double single = (AxisMotion.seconds(m, dx, dy) + t.settlingS() + t.strokeS()) / pitchMm;
        boolean nibbles = t.nibblingPerMin() > 0 && t.nibblingMaxPitchMm() > 0;
        return nibbles ? Math.min(single, 60 / t.nibblingPerMin() / t.nibblingMaxPitchMm()) : single;
    }

    /** Whether nothing of the part lies beyond the edge. */
    private boolean onTheBox(Line l) {
        return along(l.start().x(), l.end().x(), box.minX(), box.maxX()) || along(l.start().y(), l.end().y(), box.minY(),
                box.maxY());
    }

    private static boolean along(double a, double b, double least, double most) {
        return Math.abs(a - least) < 1e-6 && Math.abs(b - least) < 1e-6 || Math.abs(a - most) < 1e-6 && Math.abs(b - most) < 1e-6;
    }

    /** How far out a hit flush with the edge reaches at least, mm. */
    private double widthMm(Tool tool) {
        double slack = tool.shape() == ToolShape.ROUND ? 2 * (job.rules().scallopMm() + 0.01) : 0.01;
        double width = tool.shape() == ToolShape.CORNER_RADIUS ? 0 : Math.min(tool.lengthMm(), tool.widthMm());
        return Math.max(0, width - slack);
    }

    /** Longest straight edge that one hit can cut, mm. */
    private double straightMm(Tool tool) {
        if (tool.shape() == ToolShape.ROUND) {
            double r = tool.lengthMm() / 2;
            double h = Math.min(r, job.rules().scallopMm() + 0.01);
            return 2 * Math.sqrt(2 * r * h - h * h) + 0.1;
        }
        return tool.shape() == ToolShape.CORNER_RADIUS ? 0 : Math.max(tool.lengthMm(), tool.widthMm());
    }
}
