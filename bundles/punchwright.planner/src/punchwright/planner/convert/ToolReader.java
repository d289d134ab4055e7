// SPDX-License-Identifier: EPL-2.0
package punchwright.planner.convert;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.press.MaterialGroup;
import punchwright.engine.tooling.AngleFreedom;
import punchwright.engine.tooling.Holder;
import punchwright.engine.tooling.ShearKind;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolRoom;
import punchwright.engine.tooling.ToolShape;
import punchwright.model.shop.FormDirection;
import punchwright.model.shop.ItemStatus;
import punchwright.model.shop.MultiToolHolder;

/** Tool and holder records for the engine. */
public final class ToolReader {

    private final DrawingStore drawings;

    public ToolReader(DrawingStore drawings) {
        this.drawings = drawings;
    }

    /** Whether a tool or holder can be used now: in use and at least one on hand. */
    public static boolean usable(ItemStatus status, int onHand) {
        return status == ItemStatus.IN_USE && onHand > 0;
    }

    /** The tools that can be used now, in the order of the library. */
    public List<Tool> usable(List<punchwright.model.shop.Tool> tools) {
        return tools.stream().filter(t -> usable(t.getStatus(), t.getOnHand())).map(this::read).toList();
    }

    public static List<Holder> usableHolders(List<MultiToolHolder> holders) {
        return holders.stream().filter(h -> usable(h.getStatus(), h.getOnHand())).map(ToolReader::read).toList();
    }

    public Tool read(punchwright.model.shop.Tool t) {
        return new Tool(t.getId(), t.getName(), ToolShape.valueOf(t.getShape().getName()), t.getLengthMm(),
                t.getWidthMm() > 0 ? t.getWidthMm() : t.getLengthMm(), t.getCornerRadiusMm(),
                AngleFreedom.valueOf(t.getAngleFreedom().getName()), t.getFixedAngleDeg(),
                t.getDieClearancesMm().stream().sorted().toList(), ShearKind.valueOf(t.getShearKind().getName()),
                shearHeightMm(t), t.getPrice(), t.getGrindsLeft(), t.getGrindCost(), lives(t), t.getHitsSinceLastGrind(),
                t.getOnHand(), formHeightMm(t), t.getPositions().stream().map(p -> new Point(p.getXMm(), p.getYMm())).toList(),
                freeContour(t), new ToolRoom(t.getKeepClearMm(), t.getBodyDiameterMm(), t.getDieRadiusMm(), t.getHitsPerForm()));
    }

    private static double shearHeightMm(punchwright.model.shop.Tool t) {
        double run = t.getShearKind() == punchwright.model.shop.ShearKind.ROOF ? t.getLengthMm() / 2 : t.getLengthMm();
        return run * Math.tan(Math.toRadians(t.getShearAngleDeg()));
    }

    private static double formHeightMm(punchwright.model.shop.Tool t) {
        return t.getFormDirection() == FormDirection.DOWN ? -t.getFormHeightMm() : t.getFormHeightMm();
    }

    private static Map<MaterialGroup, Integer> lives(punchwright.model.shop.Tool t) {
        Map<MaterialGroup, Integer> lives = new EnumMap<>(MaterialGroup.class);
        t.getLives().forEach(l -> lives.put(MaterialGroup.valueOf(l.getGroup().getName()), l.getHitsPerGrind()));
        return lives;
    }

    private Contour freeContour(punchwright.model.shop.Tool t) {
        if (t.getContourDrawing() == null || t.getContourDrawing().isBlank()) {
            return null;
        }
        Contour c = drawings.shape(t.getContourDrawing(), t.getName()).outer();
        Bounds b = c.bounds();
        return c.moved(Pose.at(-b.center().x(), -b.center().y(), 0));
    }

    private static Holder read(MultiToolHolder h) {
        return new Holder(h.getId(), h.getName(), h.getInsertCount(), h.getLargestInsertDiameterMm(),
                h.getForceLimitKn() * 1000, h.isInsertsTurn(), h.getOuterDiameterMm(), h.getOnHand());
    }
}
