// SPDX-License-Identifier: EPL-2.0
package punchwright.ui.sheet;

import java.util.Arrays;

/**
 * A closed polygon in mm: x and y in turn, the first point not repeated.
 *
 * @param xy coordinates
 */
public record Outline(double[] xy) {

    /** Number of points. */
    public int size() {
        return xy.length / 2;
    }

    /** Least x, least y, largest x, largest y. */
    public double[] bounds() {
        double[] box = { Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE };
        for (int i = 0; i < xy.length; i += 2) {
            box[0] = Math.min(box[0], xy[i]);
            box[1] = Math.min(box[1], xy[i + 1]);
            box[2] = Math.max(box[2], xy[i]);
            box[3] = Math.max(box[3], xy[i + 1]);
        }
        return box;
    }

    /** Turned about the origin, degrees counter-clockwise, then moved. */
    public Outline placed(double angleDeg, double x, double y) {
        double cos = Math.cos(Math.toRadians(angleDeg));
        double sin = Math.sin(Math.toRadians(angleDeg));
        double[] moved = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            moved[i] = xy[i] * cos - xy[i + 1] * sin + x;
            moved[i + 1] = xy[i] * sin + xy[i + 1] * cos + y;
        }
        return new Outline(moved);
    }

    /** Mirrored about the y axis. */
    public Outline mirrored() {
        double[] other = xy.clone();
        for (int i = 0; i < other.length; i += 2) {
            other[i] = -other[i];
        }
        return new Outline(other);
    }

    /** Whether the point lies inside, by the even-odd rule. */
    public boolean contains(double x, double y) {
        boolean inside = false;
        for (int i = 0, j = xy.length - 2; i < xy.length; j = i, i += 2) {
            boolean crosses = xy[i + 1] > y != xy[j + 1] > y;
            if (crosses && x < (xy[j] - xy[i]) * (y - xy[i + 1]) / (xy[j + 1] - xy[i + 1]) + xy[i]) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** Largest distance of a point from the origin. */
    public double radius() {
        double largest = 0;
        for (int i = 0; i < xy.length; i += 2) {
            largest = Math.max(largest, Math.hypot(xy[i], xy[i + 1]));
        }
        return largest;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline o && Arrays.equals(xy, o.xy);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(xy);
    }
}
