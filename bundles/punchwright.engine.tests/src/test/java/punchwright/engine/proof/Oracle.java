// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.List;

import punchwright.engine.geometry.Point;
import punchwright.engine.tooling.ToolShape;

/**
 * A second opinion on {@link SmallPlan}s by sampled points: knows the plate's edges by heart and asks for single points
 * whether any punch covers them. Says yes or no only where the answer is clear by a margin.
 */
final class Oracle {

    enum Answer { HARMFUL, HARMLESS, UNCLEAR }

    private static final double STEP_MM = 0.1;
    private static final double MARGIN_MM = 0.05;
    private static final double REACH_MM = 40;

    private final SmallPlan plan;
    private final List<ProofHit> near;
    private final Point around;
    private boolean harmful;
    private boolean unclear;

    private Oracle(SmallPlan plan, Point around) {
        this.plan = plan;
        this.around = around;
        this.near = plan.hits.stream().filter(h -> !h.tool().shape().forms())
                .filter(h -> Math.hypot(h.xMm() - around.x(), h.yMm() - around.y()) < 2 * REACH_MM).toList();
    }

    /** Looks at all edges near a place. */
    static Answer edges(SmallPlan plan, Point around) {
        Oracle o = new Oracle(plan, around);
        plan.parts.forEach(p -> o.plate(p.bounds().minX(), p.bounds().minY()));
        return o.harmful ? Answer.HARMFUL : o.unclear ? Answer.UNCLEAR : Answer.HARMLESS;
    }

    private void plate(double x, double y) {
        straight(x, y, x + 100, y, 0, -1);
        straight(x, y + 60, x + 100, y + 60, 0, 1);
        straight(x, y, x, y + 60, -1, 0);
        straight(x + 100, y, x + 100, y + 60, 1, 0);
        straight(x + 15, y + 40, x + 25, y + 40, 0, 1);
        straight(x + 15, y + 50, x + 25, y + 50, 0, -1);
        straight(x + 15, y + 40, x + 15, y + 50, 1, 0);
        straight(x + 25, y + 40, x + 25, y + 50, -1, 0);
        round(x + 20, y + 20, 10);
        round(x + 62, y + 30, 20);
        for (Point joint : List.of(new Point(x + 50, y), new Point(x + 50, y + 60))) {
            joint(joint, joint.y() > y ? 1 : -1);
        }
    }

    /** Not the last 0.3 mm, which lie within the tolerance of the next edge. */
    private void straight(double x0, double y0, double x1, double y1, double nx, double ny) {
        double length = Math.hypot(x1 - x0, y1 - y0);
        for (double s = 0.35; s < length - 0.3; s += STEP_MM) {
            edge(x0 + s / length * (x1 - x0), y0 + s / length * (y1 - y0), nx, ny);
        }
    }

    private void round(double x, double y, double r) {
        int n = (int) (2 * Math.PI * r / STEP_MM);
        for (int i = 0; i < n; i++) {
            double a = 2 * Math.PI * i / n;
            edge(x + r * Math.cos(a), y + r * Math.sin(a), -Math.cos(a), -Math.sin(a));
        }
    }

    /** A point on an edge with the direction to the waste. */
    private void edge(double x, double y, double nx, double ny) {
        if (Math.hypot(x - around.x(), y - around.y()) > REACH_MM) {
            return;
        }
        double tol = SmallPlan.TOLERANCE_MM;
        harmful |= covered(x - (tol + MARGIN_MM) * nx, y - (tol + MARGIN_MM) * ny);
        unclear |= covered(x - (tol - MARGIN_MM) * nx, y - (tol - MARGIN_MM) * ny);
        if (!covered(x + (tol - 0.02) * nx, y + (tol - 0.02) * ny)) {
            open(x, y, x + (tol + MARGIN_MM) * nx, y + (tol + MARGIN_MM) * ny);
        }
    }

    /** An edge point with metal just inside the tolerance, and the point just outside of it. */
    private void open(double x, double y, double outerX, double outerY) {
        double fromJoint = plan.joints.stream().mapToDouble(j -> Math.hypot(x - j.x(), y - j.y())).min().orElse(1e9);
        double zone = SmallPlan.JOINT_MM / 2 + SmallPlan.TOLERANCE_MM;
        unclear |= fromJoint > zone - MARGIN_MM;
        harmful |= fromJoint > zone + MARGIN_MM && !covered(outerX, outerY);
    }

    private void joint(Point at, int way) {
        int open = 0;
        for (double s = -0.6; s <= 0.6; s += 0.01) {
            open += covered(at.x() + s, at.y() + way * 0.16) ? 0 : 1;
        }
        harmful |= open == 0;
        unclear |= open < 5;
    }

    private boolean covered(double x, double y) {
        return near.stream().anyMatch(h -> inside(h, x - h.xMm(), y - h.yMm()));
    }

    private static boolean inside(ProofHit h, double dx, double dy) {
        double l = h.tool().lengthMm() / 2;
        if (h.tool().shape() == ToolShape.ROUND) {
            return dx * dx + dy * dy < l * l;
        }
        double a = Math.toRadians(h.angleDeg());
        double u = dx * Math.cos(a) + dy * Math.sin(a);
        double v = dy * Math.cos(a) - dx * Math.sin(a);
        return Math.abs(u) < l && Math.abs(v) < h.tool().widthMm() / 2;
    }
}
