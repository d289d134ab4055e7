// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.WayOut;
import punchwright.engine.finding.WayOut.Kind;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Segment;
import punchwright.engine.press.SmallestFeature;

/**
 * The nearest ways out for a feature that no tool makes: first what makes it as drawn (the tool that was refused put right, the
 * part turned, a new tool, another machine; else two of these), then what changes the order (thinner, another material, rounded
 * corners, a larger opening; with a new tool where that alone is not enough). Each is asked again by {@link AskAgain}. Where
 * nothing makes it as drawn, that is said as well.
 */
final class FeatureWayOut {

    private static final int MOST_DRAWN = 3;
    private static final int MOST_CHANGED = 2;
    private static final int MOST_WIDTHS = 6;
    private static final double WIDTH_STEP_MM = 0.5;

    private final ToolingJob job;
    private final Set<String> forbidden;
    private final AskAgain again;
    private final NearestWay search = new NearestWay(NearestWay.OF_FEATURE_MM);
    private Feature feature;
    private Trial refused;
    private final Set<String> tried = new TreeSet<>();

    FeatureWayOut(ToolingJob job, Set<String> forbidden) {
        this.job = job;
        this.forbidden = forbidden;
        again = new AskAgain(job, forbidden);
    }

    /** Empty where the limit of work ends the search. {@code cause}: the tool whose refusal is the reason; null for none. */
    List<WayOut> of(Feature f, Tool cause) {
        feature = f;
        tried.clear();
        refused = new Trial(job, cause);
        again.refused(f);
        Predicate<Trial> made = t -> again.made(t, f);
        List<WayOut> ways = first(drawn(made), MOST_DRAWN);
        if (ways.isEmpty()) {
            ways = first(drawnByTwo(made), MOST_DRAWN);
        }
        boolean drawn = !ways.isEmpty();
        List<WayOut> changed = changed(made);
        if (changed.isEmpty() && !drawn) {
            changed = changedByTwo();
        }
        ways.addAll(first(changed, MOST_CHANGED));
        if (!drawn && !again.exhausted()) {
            ways.add(new WayOut(Kind.OTHER_PROCESS, 0, "", "", List.of(NearestWay.others(job).size() + 1.0,
                    (double) tried.size()), List.of()));
        }
        return ways;
    }

    private static List<WayOut> first(List<WayOut> ways, int most) {
        return new ArrayList<>(ways.subList(0, Math.min(most, ways.size())));
    }

    private List<WayOut> drawn(Predicate<Trial> made) {
        List<WayOut> ways = new ArrayList<>();
        Tool cause = refused.tool();
        if (cause != null && forbidden.contains(cause.id()) && made.test(refused)) {
            ways.add(new WayOut(Kind.ALLOW, 0, cause.id(), cause.name()));
        } else if (cause != null && !forbidden.contains(cause.id())) {
            ways.addAll(search.one(refused, NearestWay.OF_TOOL, made));
        }
        turned().ifPresent(ways::add);
        if (ways.isEmpty()) {
            newTool(job, feature, job.features()).map(t -> NewTools.way(job, t)).ifPresent(ways::add);
        }
        ways.addAll(search.one(new Trial(job, null), EnumSet.of(Kind.MACHINE), made));
        return ways;
    }

    /** The first new tool with which the feature is made. */
    private Optional<Tool> newTool(ToolingJob j, Feature f, FeatureSet within) {
        return NewTools.of(j.of(within), f).stream().peek(t -> tried.add(t.id()))
                .filter(t -> again.made(new Trial(j, t), f, within)).findFirst();
    }

    /** The smallest turn of the part that brings one of the feature's edges to a quarter. */
    private Optional<WayOut> turned() {
        Set<Double> turns = new LinkedHashSet<>();
        for (Segment s : feature.path()) {
            if (s instanceof Line) {
                double off = Math.IEEEremainder(Math.toDegrees(s.tangentAt(0).angleRad()), 90);
                if (Math.abs(off) > AngleFit.TOLERANCE_DEG) {
                    turns.add(-Math.rint(off * 1000) / 1000);
                }
            }
        }
        return turns.stream().limit(2).filter(turn -> {
            FeatureSet set = Reshape.turned(job.features(), turn);
            Feature there = set.features().stream().filter(f -> f.number() == feature.number()).findFirst().orElseThrow();
            return again.made(new Trial(job, null), there, set);
        }).map(turn -> WayOut.of(Kind.TURN_PART, turn)).findFirst();
    }

    private List<WayOut> drawnByTwo(Predicate<Trial> made) {
        List<WayOut> ways = new ArrayList<>();
        Tool cause = refused.tool();
        if (cause != null && !forbidden.contains(cause.id())) {
            ways.addAll(search.with(refused, EnumSet.of(Kind.SHEAR, Kind.DIE), made, Trial::fresh));
            ways.addAll(search.with(refused, EnumSet.of(Kind.SHEAR), made, Trial::die));
        }
        if (ways.isEmpty()) {
            ways.addAll(withNewTool(EnumSet.of(Kind.MACHINE)));
        }
        return ways;
    }

    /** A change of these kinds with the first new tool that then makes the feature. */
    private List<WayOut> withNewTool(Set<Kind> kinds) {
        Function<Trial, Optional<Tool>> tool = t -> t.job().thicknessFits() ? newTool(t.job(), feature, job.features())
                : Optional.empty();
        return search.with(new Trial(job, null), kinds, t -> tool.apply(t).isPresent(), t -> tool.apply(t)
                .map(n -> NewTools.way(t.job(), n)).orElse(WayOut.of(Kind.NONE, 0)));
    }

    private List<WayOut> changed(Predicate<Trial> made) {
        List<WayOut> ways = new ArrayList<>();
        rounded(false).ifPresent(ways::add);
        larger(false).ifPresent(ways::add);
        ways.addAll(search.one(new Trial(job, null), EnumSet.of(Kind.THINNER, Kind.MATERIAL), made));
        return ways;
    }

    private List<WayOut> changedByTwo() {
        List<WayOut> ways = new ArrayList<>();
        larger(true).ifPresent(ways::add);
        rounded(true).ifPresent(ways::add);
        ways.addAll(withNewTool(EnumSet.of(Kind.THINNER, Kind.MATERIAL)));
        return ways;
    }

    /** Inside corners rounded to the smallest radius with which the tools owned, or a new round one, make the opening. */
    private Optional<WayOut> rounded(boolean buying) {
        if (!feature.isOpening()) {
            return Optional.empty();
        }
        Set<Double> radii = new TreeSet<>();
        if (buying) {
            radii.add(Math.ceil(2 * leastMm()) / 4);
        } else {
            again.tools(job, null).stream().filter(UsableTool::round).forEach(t -> radii.add(t.tool().lengthMm() / 2));
        }
        for (double r : radii) {
            Optional<Feature> other = Reshape.rounded(feature, r);
            Optional<WayOut> way = other.flatMap(f -> as(f, WayOut.of(Kind.RADIUS, r), buying));
            if (way.isPresent() || other.isEmpty()) {
                return way;
            }
        }
        return Optional.empty();
    }

    /** The opening so wide that the sheet allows it, or that a tool owned, or a new one, makes it. */
    private Optional<WayOut> larger(boolean buying) {
        if (!feature.isOpening() || feature.widthMm() <= 0) {
            return Optional.empty();
        }
        Set<Double> widths = new TreeSet<>();
        double from = Math.max(leastMm(), feature.widthMm() + 0.01);
        if (buying) {
            for (int i = 0; i < MOST_WIDTHS; i++) {
                widths.add(Math.ceil(from / WIDTH_STEP_MM) * WIDTH_STEP_MM + i * WIDTH_STEP_MM);
            }
        } else {
            again.tools(job, null).stream().filter(t -> t.round() || t.rectangular())
                    .map(t -> Math.min(t.tool().lengthMm(), t.tool().widthMm())).filter(w -> w >= from).forEach(widths::add);
        }
        return widths.stream().limit(MOST_WIDTHS).filter(w -> w <= 2 * feature.widthMm() + WIDTH_STEP_MM)
                .map(w -> as(Reshape.larger(feature, w), WayOut.of(Kind.LARGER, w), buying)).flatMap(Optional::stream)
                .findFirst();
    }

    private double leastMm() {
        return Math.max(SmallestFeature.byCustomMm(job.material(), job.thicknessMm()), SmallestFeature.byStressMm(job
                .thicknessMm(), job.material().shearMPa(), SmallestFeature.PERMITTED_STRESS_MPA));
    }

    /** The change of shape, with a new tool where one is bought for it, if it is made then and leaves the webs it needs. */
    private Optional<WayOut> as(Feature other, WayOut way, boolean buying) {
        if (!WebCheck.leavesWebs(job, feature, other)) {
            return Optional.empty();
        }
        FeatureSet alone = Reshape.alone(job.features().part(), other);
        if (buying) {
            return newTool(job, other, alone).map(t -> way.and(NewTools.way(job, t)));
        }
        return again.made(new Trial(job, null), other, alone) ? Optional.of(way) : Optional.empty();
    }
}
