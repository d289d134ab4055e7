// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.WayOut;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/**
 * A shop and a part in which ways out are taken as they are told, by their typed values alone, to ask again from scratch.
 *
 * @param job    the shop without anything elsewhere, so that asking again finds no ways out itself
 * @param tool   the tool that is refused; null for none
 * @param number the feature that is not made; 0 for none
 * @param wishes of the engineer
 */
record WayTaken(ToolingJob job, Tool tool, int number, ToolWishes wishes) {

    static WayTaken start(ToolingJob job, Tool tool, int number, ToolWishes wishes) {
        return new WayTaken(new ToolingJob(job.features(), job.material(), job.thicknessMm(), job.machine(), job.tools(),
                job.holders(), job.rules()), tool, number, wishes);
    }

    Feature feature() {
        return job.features().features().stream().filter(f -> f.number() == number).findFirst().orElseThrow();
    }

    /** The changed part, sheet, machine and library; all changes of the way out one after the other. */
    WayTaken with(WayOut way, Elsewhere elsewhere) {
        WayTaken one = switch (way.kind()) {
            case THINNER, THICKER -> in(job.at(way.value()));
            case MATERIAL -> in(job.in(elsewhere.materials().stream().filter(m -> m.id().equals(way.id())).findFirst()
                    .orElseThrow()));
            case MACHINE -> in(job.on(elsewhere.machines().stream().filter(m -> m.id().equals(way.id())).findFirst()
                    .orElseThrow()));
            case SHEAR -> owning(Shop.changed(tool, tool.clearancesTotalMm(), ShearKind.ROOF, way.value(), tool.onHand(),
                    tool.hitsSinceGrind()));
            case DIE -> owning(Shop.changed(tool, List.of(way.value()), tool.shear(), tool.shearHeightMm(), tool.onHand(),
                    tool.hitsSinceGrind()));
            case NEW_TOOL -> owning(Shop.changed(tool, tool.clearancesTotalMm(), tool.shear(), tool.shearHeightMm(),
                    (int) way.value(), 0));
            case MORE -> {
                Tool t = job.tools().stream().filter(o -> o.id().equals(way.id())).findFirst().orElseThrow();
                yield owning(Shop.changed(t, t.clearancesTotalMm(), t.shear(), t.shearHeightMm(), (int) way.value(),
                        t.hitsSinceGrind()));
            }
            case TOOL -> owning(bought(way));
            case ALLOW -> new WayTaken(job, tool, number, ToolWishes.NONE);
            case TURN_PART -> in(job.of(Reshape.turned(job.features(), way.value())));
            case RADIUS -> drawn(Reshape.rounded(feature(), way.value()).orElseThrow());
            case LARGER -> drawn(Reshape.larger(feature(), way.value()));
            default -> throw new IllegalStateException(way + " changes nothing");
        };
        for (WayOut second : way.and()) {
            one = one.with(second, elsewhere);
        }
        return one;
    }

    private WayTaken in(ToolingJob other) {
        return new WayTaken(other, tool, number, wishes);
    }

    /** The tool in place of the one of its id, or besides. */
    private WayTaken owning(Tool t) {
        List<Tool> tools = new ArrayList<>(job.tools().stream().filter(o -> !o.id().equals(t.id())).toList());
        tools.add(t);
        return new WayTaken(new ToolingJob(job.features(), job.material(), job.thicknessMm(), job.machine(), tools, job.holders(),
                job.rules()), tool != null && tool.id().equals(t.id()) ? t : tool, number, wishes);
    }

    private Tool bought(WayOut way) {
        List<Double> v = way.values();
        ToolShape shape = ToolShape.valueOf(way.id());
        Contour own = shape != ToolShape.FREE_CONTOUR ? null
                : feature().contour().moved(Pose.at(-feature().contour().bounds().center().x(),
                        -feature().contour().bounds().center().y(), 0));
        return new Tool("bought", "bought", shape, way.value(), v.get(0) == 0 ? way.value() : v.get(0), v.get(1),
                AngleFreedom.ANY, v.get(2), shape.forms() ? List.of() : List.of(v.get(3)), ShearKind.FLAT, 0, 0, 10, 0, Map.of(),
                0, 1, shape.forms() ? 3 : 0, List.of(), own);
    }

    private WayTaken drawn(Feature other) {
        FeatureSet set = job.features();
        List<Feature> features = set.features().stream().map(f -> f.number() == number ? other : f).toList();
        List<Contour> holes = features.stream().filter(Feature::isOpening).map(Feature::contour).toList();
        return in(job.of(new FeatureSet(set.part(), new Shape(set.shape().outer(), holes), features, List.of())));
    }

    /** Whether choosing tools anew gives the feature a way to be made: an opening or form alone in the whole part, all edges. */
    boolean made() {
        Feature f = feature();
        boolean edge = edge(f);
        FeatureSet set = new FeatureSet(job.features().part(), job.features().shape(), job.features().features().stream()
                .filter(o -> edge ? edge(o) : o.number() == number).toList(), List.of());
        return ToolChoice.weigh(job.of(set), ChoiceWeights.USUAL, wishes).ways().stream()
                .anyMatch(w -> w.features().stream().anyMatch(m -> m.number() == number) && !w.alternatives().isEmpty());
    }

    private static boolean edge(Feature f) {
        return !f.isOpening() && f.form().isEmpty();
    }

    /** Whether the tool works here at all. */
    boolean usable() {
        return job.thicknessFits() && ToolCheck.refusal(job, tool).isEmpty();
    }
}
