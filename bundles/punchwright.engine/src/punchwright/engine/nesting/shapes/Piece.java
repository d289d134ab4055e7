// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.geometry.Angles;

/** A kind of shape with its allowed angles and the sizes that weigh its overlaps. Pieces of one kind share the object. */
public final class Piece {

    final Outline[] turns;
    final double area;
    final double hullArea;
    final double diameter;
    /** Fourth root of the hull's area: the product of two is a mean length. */
    final double size;

    /**
     * @param rings     polygon: outer ring first, then holes; points as {x, y}, not repeated at the end
     * @param anglesDeg allowed angles, not empty
     * @param hair      distance below which shapes count as touching, in the unit of the rings
     */
    public Piece(List<double[][]> rings, List<Double> anglesDeg, double hair) {
        Rings r = Rings.of(rings);
        List<Poles.Circle> poles = Poles.of(r);
        List<Outline> outlines = new ArrayList<>();
        for (double angle : anglesDeg) {
            outlines.add(new Outline(r, poles, angle, Angles.cosDeg(angle), Angles.sinDeg(angle), hair));
        }
        turns = outlines.toArray(Outline[]::new);
        area = r.area();
        hullArea = r.hullArea();
        size = Math.sqrt(Math.sqrt(hullArea));
        diameter = Math.hypot(r.maxX() - r.minX(), r.maxY() - r.minY());
    }

    public double area() {
        return area;
    }

    public int turns() {
        return turns.length;
    }

    public double angleDeg(int turn) {
        return turns[turn].angleDeg;
    }

    /** Largest x about the reference point. */
    public double maxX(int turn) {
        return turns[turn].maxX;
    }

    /** Largest y about the reference point. */
    public double maxY(int turn) {
        return turns[turn].maxY;
    }

    public double length(int turn) {
        return turns[turn].length();
    }

    public double width(int turn) {
        return turns[turn].width();
    }
}
