// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.WayOut;
import punchwright.engine.finding.WayOut.Kind;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Shape;
import punchwright.engine.press.DieClearance;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;

/**
 * The nearest ways out of a refusal. Nothing is worked out backwards: thickness, material, machine, die and tool are changed one
 * at a time and the rule that refused is asked again, so that a way out is one by construction.
 *
 * <p>Thickness is looked for within the machine's range, nearest first in steps of 0.1 mm, then to 0.01 mm (a feature that no
 * tool makes: 0.5, then 0.1 mm); clearance windows make the answer not monotonic, so that no bisection would do.
 */
final class NearestWay {

    /** Steps of the thickness: coarse and fine for a tool, the same for a feature, where each question takes far longer. */
    private static final double[] OF_TOOL_MM = { 0.1, 0.01 };
    private static final double[] OF_FEATURE_MM = { 0.5, 0.1 };
    private static final double SHEAR_STEP_MM = 0.5;
    private static final int MOST_NAMES = 3;

    private final ToolingJob job;
    private final Set<String> forbidden;

    /** {@code forbidden}: tools that the engineer does not want; no way out uses them. */
    NearestWay(ToolingJob job, Set<String> forbidden) {
        this.job = job;
        this.forbidden = forbidden;
    }

    /** For a tool that is refused for everything. */
    List<WayOut> ofTool(Tool tool) {
        Predicate<ToolingJob> works = j -> works(j, tool);
        List<WayOut> ways = thickness(works, OF_TOOL_MM);
        if (tool.shear() == ShearKind.FLAT && !tool.shape().forms()) {
            shear(tool, ways);
        }
        double need = DieClearance.totalMm(job.material(), job.thicknessMm());
        if (!tool.shape().forms() && works(job, with(tool, List.of(need), tool.shear(), tool.shearHeightMm(), tool.onHand(),
                tool.hitsSinceGrind()))) {
            ways.add(WayOut.of(Kind.DIE, need));
        }
        if (works(job, with(tool, tool.clearancesTotalMm(), tool.shear(), tool.shearHeightMm(), 1, 0))) {
            ways.add(WayOut.of(Kind.NEW_TOOL, 1));
        }
        ways.addAll(materials(works));
        ways.addAll(machines(works, tool));
        return ways;
    }

    /** For a feature that no tool makes here: the thickness to 0.1 mm, materials and machines with which some tool makes it. */
    List<WayOut> ofFeature(Feature feature) {
        ToolingJob alone = job.of(alone(feature));
        Predicate<ToolingJob> works = j -> made(j.of(alone.features()), feature);
        List<WayOut> ways = thickness(works, OF_FEATURE_MM);
        ways.addAll(materials(works));
        ways.addAll(machines(works, null));
        return ways;
    }

    /** For a sheet that the machine does not take. */
    List<WayOut> ofSheet() {
        List<WayOut> ways = thickness(ToolingJob::thicknessFits, OF_TOOL_MM);
        ways.addAll(machines(ToolingJob::thicknessFits, null));
        return ways;
    }

    /** For a tool that cannot be set to an angle: the smallest turn of the part with which it can. */
    static List<WayOut> ofAngle(Tool tool, boolean turning, double neededDeg) {
        for (double turn = 1; turn <= 90; turn++) {
            for (double sign : new double[] { turn, -turn }) {
                OptionalDouble angle = AngleFit.angleDeg(tool, turning, neededDeg + sign);
                if (angle.isPresent()) {
                    return List.of(WayOut.of(Kind.TURN_PART, sign));
                }
            }
        }
        return List.of();
    }

    static boolean works(ToolingJob job, Tool tool) {
        return job.thicknessFits() && new ToolLimits(job.with(tool), Set.of()).refusal(tool) == null;
    }

    private boolean made(ToolingJob job, Feature feature) {
        if (!job.thicknessFits()) {
            return false;
        }
        Unit unit = new Unit(feature, List.of(feature));
        List<UsableTool> tools = new ToolLimits(job, forbidden).usable();
        return !tools.isEmpty() && !new Candidates(job, List.of(unit), tools, ChoiceWeights.USUAL, new HashMap<>(),
                new WaysMemory()).of(unit).isEmpty();
    }

    /** The feature with nothing but the part's outline, or a large sheet, about it. */
    private FeatureSet alone(Feature feature) {
        Shape shape = new Shape(job.features().shape().outer(), List.of());
        if (feature.isOpening()) {
            Bounds b = feature.contour().bounds().grown(1000);
            shape = new Shape(Contour.rectangle(b.minX(), b.minY(), b.width(), b.height()), List.of(feature.contour()));
        }
        return new FeatureSet(job.features().part(), shape, List.of(feature), List.of());
    }

    private List<WayOut> thickness(Predicate<ToolingJob> works, double[] stepsMm) {
        List<WayOut> ways = new ArrayList<>();
        OptionalDouble thinner = nearest(works, -1, stepsMm);
        thinner.ifPresent(t -> ways.add(WayOut.of(Kind.THINNER, t)));
        if (thinner.isEmpty()) {
            nearest(works, 1, stepsMm).ifPresent(t -> ways.add(WayOut.of(Kind.THICKER, t)));
        }
        return ways;
    }

    /** The nearest thickness in one direction at which it works, mm. */
    private OptionalDouble nearest(Predicate<ToolingJob> works, int sign, double[] stepsMm) {
        Machine m = job.machine();
        double from = Math.clamp(job.thicknessMm(), m.minThicknessMm(), m.maxThicknessMm());
        for (double t = from; t >= m.minThicknessMm() - 1e-9 && t <= m.maxThicknessMm() + 1e-9; t += sign * stepsMm[0]) {
            if (works.test(job.at(rounded(t, sign)))) {
                return OptionalDouble.of(finest(works, rounded(t, sign), sign, stepsMm));
            }
        }
        return OptionalDouble.empty();
    }

    /** From a thickness that works back towards the job's own while it does. */
    private double finest(Predicate<ToolingJob> works, double good, int sign, double[] stepsMm) {
        double best = good;
        for (int i = 1; i * stepsMm[1] < stepsMm[0] - 1e-9; i++) {
            double next = rounded(good - sign * i * stepsMm[1], sign);
            if (!works.test(job.at(next))) {
                return best;
            }
            best = next;
        }
        return best;
    }

    /** To the hundredth on the side that works. */
    private static double rounded(double mm, int sign) {
        return (sign < 0 ? Math.floor(100 * mm + 1e-6) : Math.ceil(100 * mm - 1e-6)) / 100;
    }

    private void shear(Tool tool, List<WayOut> ways) {
        for (double h = SHEAR_STEP_MM; h <= 2 * job.thicknessMm() + 1e-9; h += SHEAR_STEP_MM) {
            if (works(job, with(tool, tool.clearancesTotalMm(), ShearKind.ROOF, h, tool.onHand(), tool.hitsSinceGrind()))) {
                ways.add(WayOut.of(Kind.SHEAR, h));
                return;
            }
        }
    }

    private List<WayOut> materials(Predicate<ToolingJob> works) {
        return job.elsewhere().materials().stream().filter(m -> !m.id().equals(job.material().id()))
                .filter(m -> works.test(job.in(m))).limit(MOST_NAMES).map(NearestWay::material).toList();
    }

    private static WayOut material(Material m) {
        return new WayOut(Kind.MATERIAL, 0, m.id(), m.grade());
    }

    private List<WayOut> machines(Predicate<ToolingJob> works, Tool tool) {
        return job.elsewhere().machines().stream().filter(m -> !m.id().equals(job.machine().id()))
                .filter(m -> works.test(job.on(m))).limit(MOST_NAMES)
                .map(m -> new WayOut(Kind.MACHINE, tool == null ? 0 : strongestKn(m, tool), m.id(), m.name())).toList();
    }

    private double strongestKn(Machine m, Tool tool) {
        return new Seats(m, job.holders()).fitting(ToolFootprint.circumscribedDiameterMm(tool), 0).stream()
                .mapToDouble(s -> Math.min(s.forceLimitN(), m.pressForceN())).max().orElse(0) / 1000;
    }

    static Tool with(Tool t, List<Double> clearances, ShearKind shear, double shearMm, int onHand, long hitsSinceGrind) {
        return new Tool(t.id(), t.name(), t.shape(), t.lengthMm(), t.widthMm(), t.cornerRadiusMm(), t.freedom(),
                t.fixedAngleDeg(), clearances, shear, shearMm, t.price(), t.grindsLeft(), t.grindCost(), t.hitsPerGrind(),
                hitsSinceGrind, onHand, t.formHeightMm(), t.cluster(), t.freeContour(), t.room());
    }
}
