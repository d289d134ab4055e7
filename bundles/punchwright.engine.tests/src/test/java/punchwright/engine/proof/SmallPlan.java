// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Shape;
import punchwright.engine.holding.ClampArrangement;
import punchwright.engine.press.ClearanceRule;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Material;
import punchwright.engine.press.MaterialGroup;
import punchwright.engine.sequence.Shop;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolShape;

/**
 * A plan laid out by hand: plates of 100 x 60 mm in rows, each with a round opening of 20 made by one hit, one of 40 nibbled
 * along its rim with a slug left to fall, a square of 10, a louvre 2 mm from the right edge's slit (cut before it), and an
 * outline with two micro-joints of 0.3 mm.
 */
final class SmallPlan {

    static final Tool R20 = Shop.tool("R20", ToolShape.ROUND, 20, 20);
    static final Tool R8 = Shop.tool("R8", ToolShape.ROUND, 8, 8);
    static final Tool Q10 = Shop.tool("Q10", ToolShape.SQUARE, 10, 10);
    static final Tool SLIT = Shop.tool("S30x5", ToolShape.SLITTING, 30, 5);
    static final Tool LOUVRE = Shop.tool("L", ToolShape.LOUVRE, 12, 6);
    static final Tool THIN = Shop.tool("S20x2", ToolShape.SLITTING, 20, 2);
    static final double JOINT_MM = 0.3;
    static final double TOLERANCE_MM = 0.15;
    static final Material STEEL = new Material("m", "steel", MaterialGroup.MILD_STEEL, 7.85, 270, 410, 320,
            ClearanceRule.PERCENT, 15, 1, 1);

    final List<Shape> parts = new ArrayList<>();
    final List<Point> joints = new ArrayList<>();
    final List<ProofForm> forms = new ArrayList<>();
    final List<ProofHit> hits = new ArrayList<>();
    final Map<Integer, Point> parks = new TreeMap<>();
    Machine machine = Shop.machine();
    double thicknessMm = 1.5;
    List<ClampArrangement> holdings = List.of(new ClampArrangement(List.of(200.0, 600.0), 0, 2000, false));

    private SmallPlan() {
    }

    /** Columns by rows of plates from (40, 80) on, 120 mm by 80 mm apart. */
    static SmallPlan of(int columns, int rows) {
        SmallPlan plan = new SmallPlan();
        List<List<ProofHit>> stages = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(),
                new ArrayList<>());
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                plan.plate(40 + 120 * c, 80 + 80 * r, stages);
            }
        }
        stages.forEach(s -> s.forEach(h -> plan.hits.add(new ProofHit(plan.hits.size(), h.xMm(), h.yMm(), h.angleDeg(), h.tool(),
                0))));
        return plan;
    }

    private void plate(double x, double y, List<List<ProofHit>> stages) {
        Point nibbled = new Point(x + 62, y + 30);
        parts.add(new Shape(Contour.rectangle(x, y, 100, 60), List.of(Contour.circle(new Point(x + 20, y + 20), 20),
                Contour.circle(nibbled, 40), Contour.rectangle(x + 15, y + 40, 10, 10))));
        stages.get(0).add(hit(x + 20, y + 20, 0, R20));
        stages.get(0).add(hit(x + 20, y + 45, 0, Q10));
        for (int i = 0; i < 60; i++) {
            Point at = nibbled.plus(Point.polar(16, 2 * Math.PI * i / 60));
            stages.get(0).add(hit(at.x(), at.y(), 0, R8));
        }
        stages.get(2).add(hit(x + 92, y + 8, 0, LOUVRE));
        forms.add(new ProofForm(parts.size() - 1, ToolShape.LOUVRE, new Point(x + 92, y + 8), 0));
        List<ProofHit> slits = stages.get(3);
        for (double edge : new double[] {y - 2.5, y + 62.5}) {
            joints.add(new Point(x + 50, edge < y ? y : y + 60));
            slit(slits, x - 5, x + 50 - JOINT_MM / 2, edge, 0);
            slit(slits, x + 50 + JOINT_MM / 2, x + 105, edge, 0);
        }
        slit(slits, y - 5, y + 65, x - 2.5, 90);
        slit(stages.get(1), y - 5, y + 65, x + 102.5, 90);
    }

    private static void slit(List<ProofHit> to, double from, double until, double across, double angleDeg) {
        int n = (int) Math.ceil((until - from - 1) / (30 - 1));
        for (int i = 0; i < n; i++) {
            double along = from + 15 + i * (until - from - 30) / (n - 1);
            to.add(angleDeg == 0 ? hit(along, across, 0, SLIT) : hit(across, along, 90, SLIT));
        }
    }

    private static ProofHit hit(double x, double y, double angleDeg, Tool tool) {
        return new ProofHit(0, x, y, angleDeg, tool, 0);
    }

    SmallPlan change(int index, UnaryOperator<ProofHit> how) {
        hits.set(index, how.apply(hits.get(index)));
        return this;
    }

    int first(Tool tool) {
        for (int i = 0; i < hits.size(); i++) {
            if (hits.get(i).tool() == tool) {
                return i;
            }
        }
        throw new IllegalArgumentException(tool.id());
    }

    ProofJob job() {
        return new ProofJob(machine, STEEL, thicknessMm, 2000, 1000, parts, joints, JOINT_MM, hits, holdings, TOLERANCE_MM,
                List.of(), forms, parks);
    }

    ProofResult prove() {
        return Proof.prove(job());
    }
}
