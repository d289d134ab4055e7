// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.Arrays;

/**
 * A piece of a punch: the points on the inner side of some straight lines, inside some circles and outside some others.
 * Sections with straight lines are exact. Lengths in mm; coordinates about the tool axis.
 *
 * @param lines   triples (nx, ny, c): points with nx x + ny y at most c, (nx, ny) of length one
 * @param inside  triples (x, y, r): points within r of (x, y)
 * @param outside triples (x, y, r): points not within r of (x, y)
 */
record Cell(double[] lines, double[] inside, double[] outside) implements Region {

    private static final double[] NONE = {};

    static Cell disc(double x, double y, double r) {
        return new Cell(NONE, new double[] {x, y, r}, NONE);
    }

    /** An axis-parallel box about a centre. */
    static Cell box(double x, double y, double lengthMm, double widthMm) {
        return new Cell(new double[] {1, 0, x + lengthMm / 2, -1, 0, lengthMm / 2 - x, 0, 1, y + widthMm / 2, 0, -1,
            widthMm / 2 - y}, NONE, NONE);
    }

    /** All points with nx x + ny y at most c. */
    static Cell halfPlane(double nx, double ny, double c) {
        return new Cell(new double[] {nx, ny, c}, NONE, NONE);
    }

    /** The regular polygon whose sides lie at a distance from the origin, with the outward normals from an angle on. */
    static Cell regular(int sides, double distanceMm, double firstNormalRad) {
        double[] lines = new double[3 * sides];
        for (int i = 0; i < sides; i++) {
            lines[3 * i] = Math.cos(firstNormalRad + 2 * Math.PI * i / sides);
            lines[3 * i + 1] = Math.sin(firstNormalRad + 2 * Math.PI * i / sides);
            lines[3 * i + 2] = distanceMm;
        }
        return new Cell(lines, NONE, NONE);
    }

    Cell withInside(double x, double y, double r) {
        return new Cell(lines, join(inside, x, y, r), outside);
    }

    Cell withOutside(double x, double y, double r) {
        return new Cell(lines, inside, join(outside, x, y, r));
    }

    private static double[] join(double[] triples, double x, double y, double r) {
        double[] longer = Arrays.copyOf(triples, triples.length + 3);
        longer[triples.length] = x;
        longer[triples.length + 1] = y;
        longer[triples.length + 2] = r;
        return longer;
    }

    @Override
    public Cell turned(double cos, double sin) {
        return new Cell(turn(lines, cos, sin), turn(inside, cos, sin), turn(outside, cos, sin));
    }

    private static double[] turn(double[] triples, double cos, double sin) {
        double[] t = triples.clone();
        for (int i = 0; i < t.length; i += 3) {
            t[i] = cos * triples[i] - sin * triples[i + 1];
            t[i + 1] = sin * triples[i] + cos * triples[i + 1];
        }
        return t;
    }

    @Override
    public void clip(double x0, double y0, double x1, double y1, Spans spans) {
        double from = 0;
        double to = 1;
        for (int i = 0; i < lines.length; i += 3) {
            double a = lines[i] * x0 + lines[i + 1] * y0 - lines[i + 2];
            double b = lines[i] * x1 + lines[i + 1] * y1 - lines[i + 2];
            if (a > 0 && b > 0) {
                return;
            }
            if (a > 0) {
                from = Math.max(from, a / (a - b));
            } else if (b > 0) {
                to = Math.min(to, a / (a - b));
            }
        }
        for (int i = 0; i < inside.length; i += 3) {
            double[] s = section(inside, i, x0, y0, x1, y1);
            if (s == null) {
                return;
            }
            from = Math.max(from, s[0]);
            to = Math.min(to, s[1]);
        }
        if (from < to) {
            cutOut(0, from, to, x0, y0, x1, y1, spans);
        }
    }

    /** Adds from..to less the circles from index i on. */
    private void cutOut(int i, double from, double to, double x0, double y0, double x1, double y1, Spans spans) {
        if (i == outside.length) {
            spans.add(from, to);
            return;
        }
        double[] s = section(outside, i, x0, y0, x1, y1);
        if (s == null || s[1] <= from || s[0] >= to) {
            cutOut(i + 3, from, to, x0, y0, x1, y1, spans);
            return;
        }
        if (s[0] > from) {
            cutOut(i + 3, from, s[0], x0, y0, x1, y1, spans);
        }
        if (s[1] < to) {
            cutOut(i + 3, s[1], to, x0, y0, x1, y1, spans);
        }
    }

    /** Where the line is within a circle: two parameters, or null. */
    private static double[] section(double[] circle, int i, double x0, double y0, double x1, double y1) {
        double dx = x1 - x0;
        double dy = y1 - y0;
        double fx = x0 - circle[i];
        double fy = y0 - circle[i + 1];
        double a = dx * dx + dy * dy;
        double half = fx * dx + fy * dy;
        double c = fx * fx + fy * fy - circle[i + 2] * circle[i + 2];
        double d = half * half - a * c;
        if (d <= 0 || a == 0) {
            return a == 0 && c < 0 ? new double[] {0, 1} : null;
        }
        double root = Math.sqrt(d);
        return new double[] {(-half - root) / a, (-half + root) / a};
    }
}
