// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.shapes;

import java.util.List;

/**
 * One shape at one angle, ready for overlap tests: edges, the same edges inset by a hair for the shape that moves, bounding
 * box, filling circles. Coordinates are about the shape's own reference point. Immutable by convention: arrays are shared.
 */
final class Outline {

    final double angleDeg;
    final double[] ax;
    final double[] ay;
    final double[] bx;
    final double[] by;
    final double[] insetAx;
    final double[] insetAy;
    final double[] insetBx;
    final double[] insetBy;
    final double minX;
    final double minY;
    final double maxX;
    final double maxY;
    final float[] poleX;
    final float[] poleY;
    final float[] poleR;

    /**
     * @param rings polygon at angle 0
     * @param poles its filling circles
     * @param hair  inset of the moving edges, so that shapes that only touch do not overlap
     */
    Outline(Rings rings, List<Poles.Circle> poles, double angleDeg, double cos, double sin, double hair) {
        this.angleDeg = angleDeg;
        Rings turned = rings.turned(cos, sin);
        double[][] e = edges(turned);
        ax = e[0];
        ay = e[1];
        bx = e[2];
        by = e[3];
        double[][] i = edges(turned.inset(hair));
        insetAx = i[0];
        insetAy = i[1];
        insetBx = i[2];
        insetBy = i[3];
        minX = turned.minX();
        minY = turned.minY();
        maxX = turned.maxX();
        maxY = turned.maxY();
        poleX = new float[poles.size()];
        poleY = new float[poles.size()];
        poleR = new float[poles.size()];
        for (int k = 0; k < poleR.length; k++) {
            Poles.Circle p = poles.get(k);
            poleX[k] = (float) (cos * p.x() - sin * p.y());
            poleY[k] = (float) (sin * p.x() + cos * p.y());
            poleR[k] = (float) p.r();
        }
    }

    private static double[][] edges(Rings rings) {
        int n = 0;
        for (double[] x : rings.xs()) {
            n += x.length;
        }
        double[][] e = new double[4][n];
        int k = 0;
        for (int r = 0; r < rings.xs().length; r++) {
            int m = rings.xs()[r].length;
            for (int i = 0; i < m; i++, k++) {
                e[0][k] = rings.xs()[r][i];
                e[1][k] = rings.ys()[r][i];
                e[2][k] = rings.xs()[r][(i + 1) % m];
                e[3][k] = rings.ys()[r][(i + 1) % m];
            }
        }
        return e;
    }

    double length() {
        return maxX - minX;
    }

    double width() {
        return maxY - minY;
    }

    /** Whether a point, about the reference point, lies inside (even-odd over all rings). */
    boolean contains(double x, double y) {
        boolean inside = false;
        for (int i = 0; i < ax.length; i++) {
            if (ay[i] > y != by[i] > y && x < (bx[i] - ax[i]) * (y - ay[i]) / (by[i] - ay[i]) + ax[i]) {
                inside = !inside;
            }
        }
        return inside;
    }
}
