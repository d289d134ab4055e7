// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.Reason;
import punchwright.engine.finding.WayOut;
import punchwright.engine.press.SmallestFeature;

/** Says why a feature has no candidate: the refusal of the tool that would make it, else that none is owned. */
final class WhyNot {

    /** What another thickness, material or machine may mend. */
    private static final Set<Reason> ASKED = Set.of(ToolingReason.NO_TOOL, ToolingReason.SMALL_OPENING,
            ToolingReason.INSIDE_RADIUS, ToolingReason.SHORT_EDGE, ToolingReason.TIGHT);
    private static final int MOST_ASKED = 8;

    private final Map<String, List<WayOut>> asked = new HashMap<>();
    private final ToolingJob job;
    private final ToolLimits limits;

    WhyNot(ToolingJob job, ToolLimits limits) {
        this.job = job;
        this.limits = limits;
    }

    /** The reason with its nearest ways out; features that are alike share the work; the first few get it. */
    Finding reason(Feature feature) {
        Finding raw = bare(feature);
        if (!job.elsewhere().asked() || !raw.waysOut().isEmpty() || !ASKED.contains(raw.reason())) {
            return raw;
        }
        String key = raw.reason() + " " + FeatureNames.what(feature) + " " + feature.angleDeg() + " " + feature.path().size();
        if (!asked.containsKey(key)) {
            asked.put(key, asked.size() < MOST_ASKED ? new NearestWay(job, limits.forbidden()).ofFeature(feature) : List.of());
        }
        return raw.with(asked.get(key));
    }

    private Finding bare(Feature feature) {
        String subject = FeatureNames.subject(job.features().part(), feature);
        if (feature.kind() == FeatureKind.FORM) {
            return form(feature, subject);
        }
        ExactHit exact = new ExactHit(job.rules());
        List<Tool> exactTools = job.tools().stream().filter(t -> exact.matches(feature, t)).toList();
        Optional<Finding> refusal = exactTools.stream().map(limits::refusalWithWays).filter(f -> f != null).findFirst();
        if (refusal.isPresent()) {
            return about(refusal.get(), subject, feature);
        }
        if (!exactTools.isEmpty()) {
            Tool tool = exactTools.getFirst();
            return Finding.at(feature.center(), ToolingReason.ANGLE, subject, feature.angleDeg(), tool.name())
                    .with(limits.anglesOut(tool, feature.angleDeg()));
        }
        double least = SmallestFeature.byCustomMm(job.material(), job.thicknessMm());
        if (feature.isOpening() && Math.min(feature.lengthMm(), feature.widthMm()) < least - 1e-6) {
            return Finding.at(feature.center(), ToolingReason.SMALL_OPENING, subject, Math.min(feature.lengthMm(),
                    feature.widthMm()),
                    least, job.thicknessMm(), job.material().grade());
        }
        Optional<Finding> cutter = feature.isOpening() ? Optional.empty() : edgeTool();
        if (cutter.isPresent()) {
            return about(cutter.get(), subject, feature);
        }
        Optional<Finding> edge = new EdgeWhy(job, limits.usable()).reason(feature, subject);
        if (edge.isPresent()) {
            return edge.get();
        }
        return Finding.at(feature.center(), ToolingReason.NO_TOOL, subject, FeatureNames.what(feature), nearest(feature));
    }

    /** Why the smallest of the edge-cutting tools is refused, when all of them are. */
    private Optional<Finding> edgeTool() {
        List<Tool> cutters = job.tools().stream().filter(t -> switch (t.shape()) {
            case ROUND, SQUARE, RECTANGLE, SLITTING -> true;
            default -> false;
        }).sorted(Comparator.comparingDouble(ToolFootprint::cutLengthMm).thenComparing(Tool::id)).toList();
        boolean allRefused = cutters.stream().allMatch(t -> limits.refusal(t) != null);
        return allRefused ? cutters.stream().map(limits::refusalWithWays).findFirst() : Optional.empty();
    }

    private Finding form(Feature feature, String subject) {
        if (feature.form().isEmpty()) {
            return Finding.at(feature.center(), ToolingReason.FORM_UNNAMED, subject, FeatureNames.what(feature),
                    feature.center().x(), feature.center().y());
        }
        return job.tools().stream().filter(t -> t.shape().name().equalsIgnoreCase(feature.form())).map(limits::refusalWithWays)
                .filter(f -> f != null).findFirst().map(f -> about(f, subject, feature))
                .orElseGet(() -> Finding.at(feature.center(), ToolingReason.NO_FORM_TOOL, subject, FeatureNames.what(feature)));
    }

    /** A tool that the engineer forbids is no error by itself; a feature that stays unmade for it is. */
    private Finding about(Finding refusal, String subject, Feature feature) {
        if (!refusal.isError()) {
            return Finding.at(feature.center(), ToolingReason.NEEDS_FORBIDDEN, subject, refusal.subject(),
                    FeatureNames.what(feature))
                    .with(job.tools().stream().filter(t -> t.name().equals(refusal.subject())).limit(1)
                            .map(t -> new WayOut(WayOut.Kind.ALLOW, 0, t.id(), t.name())).toList());
        }
        return new Finding(refusal.reason(), subject + ", tool " + refusal.subject(), refusal.arguments(), feature.center(),
                refusal.waysOut());
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
