// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.WayOut;
import punchwright.engine.finding.WayOut.Kind;
import punchwright.engine.press.SmallestFeature;

/** Says why a feature has no candidate: the refusal of the tool that would make it, else that none is owned. */
final class WhyNot {

    /** Different features of one part that ways out are looked for. */
    private static final int MOST_ASKED = 32;

    private final Map<String, List<WayOut>> asked = new HashMap<>();
    private final Map<String, List<WayOut>> known;
    private final ToolingJob job;
    private final ToolLimits limits;
    private FeatureWayOut out;

    /** {@code known}: ways out of openings of other parts of the order, added to; a larger opening depends on its neighbours. */
    WhyNot(ToolingJob job, ToolLimits limits, Map<String, List<WayOut>> known) {
        this.known = known;
        this.job = job;
        this.limits = limits;
    }

    /**
     * Why, and the tool whose refusal it is.
     *
     * @param cause null where it is no tool's
     */
    private record Why(Finding finding, Tool cause) {
    }

    /** The reason with its nearest ways out; features that are alike share the work; the first few get it. */
    Finding reason(Feature feature) {
        Why why = why(feature, FeatureNames.subject(job.features().part(), feature));
        if (!job.elsewhere().asked() || why.finding().reason() == ToolingReason.FORM_UNNAMED) {
            return why.finding();
        }
        String key = why.finding().reason() + " " + (feature.isOpening() ? Candidates.key(feature) : FeatureNames.what(feature)
                + " " + feature.angleDeg() + " " + feature.path().size());
        List<WayOut> before = known.get(key);
        if (before != null) {
            return why.finding().with(before);
        }
        if (!asked.containsKey(key)) {
            asked.put(key, asked.size() < MOST_ASKED ? ways(feature, why.cause(), asked.size()) : notAsked(MOST_ASKED));
        }
        List<WayOut> ways = asked.get(key);
        if (feature.isOpening() && ways.stream().noneMatch(w -> w.kind() == Kind.LARGER || w.kind() == Kind.NOT_ASKED)) {
            known.put(key, ways);
        }
        return why.finding().with(ways);
    }

    private List<WayOut> ways(Feature feature, Tool cause, int before) {
        if (out == null) {
            out = new FeatureWayOut(job, limits.forbidden());
        }
        List<WayOut> ways = out.of(feature, cause);
        return ways.isEmpty() ? notAsked(before) : ways;
    }

    private static List<WayOut> notAsked(int before) {
        return List.of(WayOut.of(Kind.NOT_ASKED, before));
    }

    private Why why(Feature feature, String subject) {
        if (feature.kind() == FeatureKind.FORM) {
            return form(feature, subject);
        }
        ExactHit exact = new ExactHit(job.rules());
        List<Tool> exactTools = job.tools().stream().filter(t -> exact.matches(feature, t)).toList();
        Optional<Tool> refused = nearestRefused(exactTools.stream());
        if (refused.isPresent()) {
            return about(refused.get(), subject, feature);
        }
        if (!exactTools.isEmpty()) {
            Tool tool = exactTools.getFirst();
            return new Why(Finding.at(feature.center(), ToolingReason.ANGLE, subject, feature.angleDeg(), tool.name()), tool);
        }
        double least = SmallestFeature.byCustomMm(job.material(), job.thicknessMm());
        double width = Math.min(feature.lengthMm(), feature.widthMm());
        if (feature.isOpening() && width < least - 1e-6) {
            return new Why(Finding.at(feature.center(), ToolingReason.SMALL_OPENING, subject, width, least, job.thicknessMm(),
                    job.material().grade()), null);
        }
        Optional<Tool> cutter = feature.isOpening() ? Optional.empty() : edgeTool();
        if (cutter.isPresent()) {
            return about(cutter.get(), subject, feature);
        }
        Finding edge = new EdgeWhy(job, limits.usable()).reason(feature, subject).orElseGet(() -> Finding.at(feature.center(),
                ToolingReason.NO_TOOL, subject, FeatureNames.what(feature), nearest(feature)));
        return new Why(edge, null);
    }

    /** The smallest of the edge-cutting tools, when all of them are refused. */
    private Optional<Tool> edgeTool() {
        List<Tool> cutters = job.tools().stream().filter(t -> switch (t.shape()) {
            case ROUND, SQUARE, RECTANGLE, SLITTING -> true;
            default -> false;
        }).sorted(Comparator.comparingDouble(ToolFootprint::cutLengthMm).thenComparing(Tool::id)).toList();
        return cutters.stream().allMatch(t -> limits.refusal(t) != null) ? nearestRefused(cutters.stream()) : Optional.empty();
    }

    /** The first of the refused tools; before it one that is forbidden and nothing else. */
    private Optional<Tool> nearestRefused(Stream<Tool> tools) {
        return tools.filter(t -> limits.refusal(t) != null).min(Comparator.comparing(t -> refusal(t).isError()));
    }

    private Why form(Feature feature, String subject) {
        if (feature.form().isEmpty()) {
            return new Why(Finding.at(feature.center(), ToolingReason.FORM_UNNAMED, subject, FeatureNames.what(feature),
                    feature.center().x(), feature.center().y()), null);
        }
        Stream<Tool> fitting = job.tools().stream().filter(t -> FormHits.fits(feature, t, job.rules().sizeToleranceMm()));
        return nearestRefused(fitting).map(t -> about(t, subject, feature)).orElseGet(() -> new Why(Finding.at(feature.center(),
                ToolingReason.NO_FORM_TOOL, subject, FeatureNames.what(feature), nearestForm(feature)), null));
    }

    /** A tool that the engineer forbids is no error by itself; a feature that stays unmade for it is, if it could work here. */
    private Why about(Tool tool, String subject, Feature feature) {
        Finding refusal = refusal(tool);
        if (!refusal.isError()) {
            return new Why(Finding.at(feature.center(), ToolingReason.NEEDS_FORBIDDEN, subject, refusal.subject(),
                    FeatureNames.what(feature)), tool);
        }
        return new Why(new Finding(refusal.reason(), subject + ", tool " + refusal.subject(), refusal.arguments(),
                feature.center()), tool);
    }

    /** Why the tool is refused; that it is forbidden only where nothing else speaks against it. */
    private Finding refusal(Tool tool) {
        Finding refusal = limits.refusal(tool);
        return refusal.isError() ? refusal : ToolCheck.refusal(job, tool).orElse(refusal);
    }

    /** The forming tool of the kind that is nearest in size, "-" for none. */
    private String nearestForm(Feature f) {
        return job.tools().stream().filter(t -> t.shape().name().equalsIgnoreCase(f.form()))
                .min(Comparator.comparingDouble((Tool t) -> Math.abs(t.lengthMm() - f.lengthMm()) + Math.abs(t.widthMm() - f
                        .widthMm())).thenComparing(Tool::id)).map(Tool::name).orElse("-");
    }

    private String nearest(Feature feature) {
        if (!feature.isOpening()) {
            return "-";
        }
        double area = feature.contour().areaMm2();
        return job.tools().stream().filter(t -> !t.shape().forms())
                .min(Comparator.comparingDouble((Tool t) -> Math.abs(Math.log(ToolFootprint.areaMm2(t) / area)))
                        .thenComparing(Tool::id))
                .map(Tool::name).orElse("-");
    }
}
