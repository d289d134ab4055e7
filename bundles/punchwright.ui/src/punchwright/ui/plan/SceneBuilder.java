// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import punchwright.model.plan.Finding;
import punchwright.model.plan.Hit;
import punchwright.model.plan.Holding;
import punchwright.model.plan.Layout;
import punchwright.model.plan.MicroJoint;
import punchwright.model.plan.Placement;
import punchwright.model.plan.Plan;
import punchwright.model.plan.SheetJob;
import punchwright.model.plan.ToolUse;
import punchwright.model.shop.Clamps;
import punchwright.model.work.Part;
import punchwright.ui.picture.ToolOutlines;
import punchwright.ui.sheet.HitGroup;
import punchwright.ui.sheet.Outline;
import punchwright.ui.sheet.Scene;

/** Makes the picture of a layout from the plan. Reads the plan only; the plan's references must be resolved. */
final class SceneBuilder {

    private static final double CLAMP_OUTSIDE = 0.9;

    private final Plan plan;
    private final Layout layout;
    private final Function<Part, List<Outline>> shapes;

    SceneBuilder(Plan plan, Layout layout, Function<Part, List<Outline>> shapes) {
        this.plan = plan;
        this.layout = layout;
        this.shapes = shapes;
    }

    Scene build() {
        return new Scene(layout.getLengthMm(), layout.getWidthMm(), pieces(), groups(), holds(), joints(), List.of());
    }

    private List<Scene.Piece> pieces() {
        List<Scene.Piece> pieces = new ArrayList<>();
        for (Placement p : layout.getPlacements()) {
            if (p.getPart() != null) {
                List<Outline> contours = new ArrayList<>();
                for (Outline contour : shapes.apply(p.getPart())) {
                    Outline turned = p.isMirrored() ? contour.mirrored() : contour;
                    contours.add(turned.placed(p.getAngleDeg(), p.getXMm(), p.getYMm()));
                }
                pieces.add(Scene.Piece.of(p.getNumber(), label(p.getPart()), contours));
            }
        }
        return pieces;
    }

    private static String label(Part part) {
        return part.getNumber() == null || part.getNumber().isBlank() ? part.getName() : part.getNumber();
    }

    private List<HitGroup> groups() {
        Map<ToolUse, HitGroup.Builder> builders = new LinkedHashMap<>();
        for (ToolUse use : ((SheetJob) layout.eContainer()).getToolUses()) {
            if (use.getTool() != null) {
                builders.put(use, new HitGroup.Builder(use.getBalloon(), use.getTool().getName(),
                        ToolOutlines.single(use.getTool()), ToolOutlines.roundDiameter(use.getTool())));
            }
        }
        List<Holding> holdings = layout.getHoldings();
        int number = 0;
        for (Hit hit : layout.getHits()) {
            HitGroup.Builder builder = builders.get(hit.getToolUse());
            if (builder != null) {
                builder.add(number, holdings.indexOf(hit.getHolding()), hit.getXMm(), hit.getYMm(), hit.getAngleDeg());
            }
            number++;
        }
        return builders.values().stream().map(b -> b.build(layout.getLengthMm(), layout.getWidthMm()))
                .filter(g -> g.size() > 0).toList();
    }

    private List<Scene.Hold> holds() {
        List<Scene.Hold> holds = new ArrayList<>();
        Clamps clamps = plan.getMachine() == null ? null : plan.getMachine().getClamps();
        double width = clamps == null ? 100 : clamps.getWidthMm();
        double depth = clamps == null ? 40 : clamps.getDepthMm();
        double zone = clamps == null ? 0 : clamps.getDeadZoneMm();
        for (Holding h : layout.getHoldings()) {
            List<double[]> boxes = new ArrayList<>();
            for (double x : h.getClampPositionsMm()) {
                double outside = depth * CLAMP_OUTSIDE;
                double edge = layout.getWidthMm();
                boxes.add(h.isTurned() ? new double[] { x - width / 2, edge - depth, x + width / 2, edge + outside }
                        : new double[] { x - width / 2, -outside, x + width / 2, depth });
            }
            holds.add(new Scene.Hold(holds.size(), boxes, zone, h.getReachMinXMm(), h.getReachMaxXMm(), h.isTurned()));
        }
        return holds;
    }

    private List<Scene.Joint> joints() {
        List<Scene.Joint> joints = new ArrayList<>();
        for (MicroJoint j : layout.getMicroJoints()) {
            joints.add(new Scene.Joint(j.getXMm(), j.getYMm(), j.getWidthMm()));
        }
        return joints;
    }

    /** The mark of a finding with a place. */
    static Scene.Mark mark(Finding finding) {
        return new Scene.Mark(finding.getXMm(), finding.getYMm(), 2 - finding.getSeverity().getValue());
    }
}
