// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.ArrayList;
import java.util.List;

/** A vertex of a polyline; the bulge (tangent of a quarter of the included angle) bends the edge to the next one. */
record BulgeVertex(Vec3 at, double bulge) {

    /** A bulge this small moves the middle of a 1000 mm edge by 5e-6 mm. */
    private static final double STRAIGHT = 1e-8;

    /** The edges of a polyline, without those of no length. */
    static List<RawCurve> edges(List<BulgeVertex> vertices, boolean closed, Frame plane) {
        List<RawCurve> edges = new ArrayList<>(vertices.size());
        int n = vertices.size();
        for (int i = 0; i < (closed ? n : n - 1); i++) {
            BulgeVertex from = vertices.get(i);
            Vec3 to = vertices.get((i + 1) % n).at;
            if (!from.at.equals(to)) {
                edges.add((Math.abs(from.bulge) < STRAIGHT ? RawLine.of(from.at, to) : arc(from.at, to, from.bulge))
                        .mapped(plane));
            }
        }
        return edges;
    }

    private static RawRound arc(Vec3 p, Vec3 q, double bulge) {
        double h = (1 - bulge * bulge) / (4 * bulge);
        double x = (p.x() + q.x()) / 2 - h * (q.y() - p.y());
        double y = (p.y() + q.y()) / 2 + h * (q.x() - p.x());
        return new RawRound(x, y, p.z(), Math.hypot(p.x() - x, p.y() - y), Math.atan2(p.y() - y, p.x() - x),
                4 * Math.atan(bulge));
    }
}
