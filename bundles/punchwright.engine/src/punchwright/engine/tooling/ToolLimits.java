// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import punchwright.engine.finding.Finding;
import punchwright.engine.finding.WayOut;
import punchwright.engine.press.DieClearance;
import punchwright.engine.press.FormingRules;
import punchwright.engine.press.Material;
import punchwright.engine.press.PunchingForce;
import punchwright.engine.press.SmallestFeature;
import punchwright.engine.press.StrippingForce;
import punchwright.engine.press.ToolLife;

/**
 * Which tools owned can work this material, thickness and machine at all, and why the others cannot: on hand, life, size of
 * the punch, clearance, force and place. Each refusal is typed and carries its values.
 */
final class ToolLimits {

    /** Clearance on hand over the need: usable from 0.4 to 2.2, with a warning outside 0.6 to 1.6. Common practice. */
    private static final double TIGHT = 0.4;
    private static final double TIGHT_WARNING = 0.6;
    private static final double WIDE_WARNING = 1.6;
    private static final double WIDE = 2.2;

    /**
     * Grinds of a whole tool life where fewer are left: the record does not say how many a new tool had, and a part-used tool is
     * no dearer a hit than a new one. Common practice, no source.
     */
    private static final int USUAL_GRINDS = 10;

    private final ToolingJob job;
    private final Seats seats;
    private final Set<String> forbidden;
    private final List<UsableTool> usable = new ArrayList<>();
    private final Map<String, Finding> refused = new LinkedHashMap<>();
    private final Map<String, Finding> withWays = new LinkedHashMap<>();

    ToolLimits(ToolingJob job, Set<String> forbidden) {
        this(job, forbidden, new WaysMemory());
    }

    ToolLimits(ToolingJob job, Set<String> forbidden, WaysMemory memory) {
        this.job = job;
        this.forbidden = forbidden;
        seats = new Seats(job.machine(), job.holders());
        for (Tool tool : job.tools()) {
            WaysMemory.Sorted s = memory.sorted(tool, this::sort);
            if (s.refusal() != null) {
                refused.put(tool.id(), s.refusal());
            } else {
                usable.add(s.usable());
            }
        }
    }

    List<UsableTool> usable() {
        return usable;
    }

    /** Tools that the engineer does not want. */
    Set<String> forbidden() {
        return forbidden;
    }

    /** Why the tool is refused; null when it is usable. */
    Finding refusal(Tool tool) {
        return refused.get(tool.id());
    }

    /** The refusal with its nearest ways out; one that the engineer wished has none. */
    Finding refusalWithWays(Tool tool) {
        Finding refusal = refusal(tool);
        if (refusal == null || !refusal.isError() || !job.elsewhere().asked()) {
            return refusal;
        }
        return withWays.computeIfAbsent(tool.id(), id -> refusal.with(NearestWay.ofTool(new Trial(job, tool))));
    }

    /** The smallest turn of the part with which the tool can be set to the angle. */
    List<WayOut> anglesOut(Tool tool, double neededDeg) {
        return usable.stream().filter(t -> t.id().equals(tool.id())).findFirst()
                .map(t -> NearestWay.ofAngle(tool, t.turning(), neededDeg)).orElse(List.of());
    }

    private WaysMemory.Sorted sort(Tool tool) {
        double force = forceN(tool);
        double need = DieClearance.totalMm(job.material(), job.thicknessMm());
        double clearance = DieClearance.nearestMm(tool.clearancesTotalMm(), need);
        Optional<Finding> refusal = onHand(tool).or(() -> tool.shape().forms() ? Optional.empty() : cutting(tool, force, need,
                clearance))
                .or(() -> standing(tool)).or(() -> seats.refusal(tool.name(), ToolFootprint.circumscribedDiameterMm(tool), force
                        * job.rules().forceReserve()));
        return refusal.map(f -> new WaysMemory.Sorted(null, f))
                .orElseGet(() -> new WaysMemory.Sorted(usable(tool, force, need, clearance), null));
    }

    private double forceN(Tool tool) {
        Material m = job.material();
        if (tool.shape().forms()) {
            return FormForce.forceN(tool, m, job.thicknessMm());
        }
        double height = tool.shear() == ShearKind.FLAT ? 0 : tool.shearHeightMm();
        return PunchingForce.flatN(ToolFootprint.cutLengthMm(tool), job.thicknessMm(), m.shearMPa())
                * PunchingForce.shearFactor(m.group(), job.thicknessMm(), height);
    }

    private UsableTool usable(Tool tool, double force, double need, double clearance) {
        boolean turning = seats.fitting(ToolFootprint.circumscribedDiameterMm(tool), force * job.rules().forceReserve()).stream()
                .anyMatch(Seat::turns);
        double share = StrippingForce.share(job.material().group(), clearance, need);
        List<Finding> warnings = new ArrayList<>();
        if (!tool.shape().forms() && (clearance < TIGHT_WARNING * need || clearance > WIDE_WARNING * need)) {
            warnings.add(Finding.of(ToolingReason.CLEARANCE_OFF, tool.name(), clearance, need));
        } else if (!tool.shape().forms()) {
            warnings.addAll(DieClearance.effect(tool.name(), clearance, need));
        }
        boolean forms = tool.shape().forms();
        return new UsableTool(tool, new Footprint(tool), force, forms ? 0 : StrippingForce.byShareN(force, share), forms ? 0
                : need,
                forms || Double.isNaN(clearance) ? 0 : clearance, turning,
                wearPerHit(tool, job.material()), hitsLeft(tool), warnings);
    }

    private Optional<Finding> onHand(Tool tool) {
        if (forbidden.contains(tool.id())) {
            return Optional.of(Finding.of(ToolingReason.FORBIDDEN, tool.name(), tool.name()));
        }
        if (tool.onHand() < 1) {
            return Optional.of(Finding.of(ToolingReason.NOT_ON_HAND, tool.name(), tool.onHand()));
        }
        if (tool.grindsLeft() <= 0 && hitsLeft(tool) <= 0) {
            return Optional.of(Finding.of(ToolingReason.WORN_OUT, tool.name(), tool.hitsSinceGrind(), hitsPerGrind(tool)));
        }
        return Optional.empty();
    }

    /** A form must pass under stripper and head, or over table and dies, where the machine's record says how much does. */
    private Optional<Finding> standing(Tool tool) {
        double stands = tool.standsMm();
        double given = stands < 0 ? job.machine().formClearance().downMm() : job.machine().formClearance().upMm();
        return given <= 0 || FormingRules.passes(stands, given) ? Optional.empty()
                : Optional.of(Finding.of(ToolingReason.FORM_STANDS, tool.name(), Math.abs(stands), given, job.machine().name(),
                        stands < 0 ? 1 : 0));
    }

    private Optional<Finding> cutting(Tool tool, double force, double need, double clearance) {
        double least = SmallestFeature.byCustomMm(job.material(), job.thicknessMm());
        double width = Math.min(tool.lengthMm(), tool.widthMm());
        if (tool.shape() != ToolShape.FREE_CONTOUR && width < least - 1e-6) {
            return Optional.of(Finding.of(ToolingReason.SMALL, tool.name(), width, least, job.thicknessMm(), job.material()
                    .grade()));
        }
        double stress = SmallestFeature.punchStressMPa(force, ToolFootprint.areaMm2(tool));
        if (stress > SmallestFeature.PERMITTED_STRESS_MPA) {
            return Optional.of(Finding.of(ToolingReason.PUNCH_STRESS, tool.name(), stress, SmallestFeature.PERMITTED_STRESS_MPA));
        }
        if (!(clearance >= TIGHT * need && clearance <= WIDE * need)) {
            return Optional.of(Finding.of(ToolingReason.CLEARANCE, tool.name(), Double.isNaN(clearance) ? 0 : clearance, need));
        }
        return Optional.empty();
    }

    private double hitsPerGrind(Tool tool) {
        return hitsPerGrind(tool, job.material());
    }

    private static double hitsPerGrind(Tool tool, Material material) {
        Integer hits = tool.hitsPerGrind().get(material.group());
        return hits == null ? 0 : hits * material.lifeFactor();
    }

    /** Cost of wear of a hit, currency; 0 where the record gives no life. */
    static double wearPerHit(Tool tool, Material material) {
        double hits = hitsPerGrind(tool, material);
        return hits <= 0 ? 0 : ToolLife.costPerHit(tool.price(), 0, grinds(tool), tool.grindCost(), hits);
    }

    /** Grinds of the tool's whole life. */
    static int grinds(Tool tool) {
        return Math.max(USUAL_GRINDS, tool.grindsLeft());
    }

    /** Unlimited when the record gives no life. */
    private double hitsLeft(Tool tool) {
        double perGrind = hitsPerGrind(tool);
        return perGrind <= 0 ? Double.MAX_VALUE : perGrind - tool.hitsSinceGrind();
    }
}
