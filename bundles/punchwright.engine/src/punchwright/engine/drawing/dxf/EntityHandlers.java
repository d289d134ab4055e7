// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The table of entity types and what is made of each (group codes: DXF Reference, "ENTITIES"). */
final class EntityHandlers {

    private static final double FULL = 2 * Math.PI;

    static final Map<String, EntityHandler> TABLE = Map.ofEntries(Map.entry("LINE", EntityHandlers::line),
            Map.entry("ARC", EntityHandlers::arc), Map.entry("CIRCLE", EntityHandlers::circle),
            Map.entry("ELLIPSE", EntityHandlers::ellipse), Map.entry("LWPOLYLINE", EntityHandlers::lightPolyline),
            Map.entry("SPLINE", SplineHandler::read), Map.entry("INSERT", EntityHandlers::insert),
            Map.entry("POLYLINE", (e, t) -> t.polyline().start(e, t)), Map.entry("VERTEX", (e, t) -> t.polyline().vertex(e)),
            Map.entry("SEQEND", (e, t) -> t.polyline().finish(t)), Map.entry("TEXT", NoteHandler::text),
            Map.entry("MTEXT", NoteHandler::lines), Map.entry("POINT", NoteHandler::point),
            Map.entry("ATTRIB", NoteHandler::text), Map.entry("SOLID", EntityHandlers::filled),
            Map.entry("TRACE", EntityHandlers::filled));

    /** Types that are known and never cut. */
    static final Set<String> NOT_CUT = Set.of("TEXT", "MTEXT", "POINT", "ATTRIB", "ATTDEF", "DIMENSION", "ARC_DIMENSION",
            "LARGE_RADIAL_DIMENSION", "LEADER", "MLEADER", "MULTILEADER", "TOLERANCE", "HATCH", "MPOLYGON",
            "3DFACE", "3DSOLID", "REGION", "BODY", "SURFACE", "MESH", "IMAGE", "WIPEOUT", "VIEWPORT", "XLINE", "RAY", "SHAPE",
            "OLEFRAME", "OLE2FRAME", "LIGHT", "SUN", "HELIX", "MLINE", "UNDERLAY", "PDFUNDERLAY", "DWFUNDERLAY",
            "DGNUNDERLAY", "PLANESURFACE", "EXTRUDEDSURFACE", "LOFTEDSURFACE", "REVOLVEDSURFACE", "SWEPTSURFACE");

    private EntityHandlers() {
    }

    private static void line(Entity e, EntityTarget target) {
        RawLine line = new RawLine(e.number(10, 0), e.number(20, 0), e.number(30, 0), e.number(11, 0), e.number(21, 0),
                e.number(31, 0));
        boolean none = line.x1() == line.x2() && line.y1() == line.y2() && line.z1() == line.z2();
        target.add(e, none ? List.of() : List.of(line), false);
    }

    private static void circle(Entity e, EntityTarget target) {
        target.add(e, round(e, 0, FULL), true);
    }

    private static void arc(Entity e, EntityTarget target) {
        double start = Math.toRadians(e.number(50, 0));
        double sweep = positiveTurn(Math.toRadians(e.number(51, 360)) - start);
        target.add(e, round(e, start, sweep), false);
    }

    private static List<RawCurve> round(Entity e, double start, double sweep) {
        double r = e.number(40, 0);
        return r <= 0 ? List.of()
                : List.of(new RawRound(e.number(10, 0), e.number(20, 0), e.number(30, 0), r, start, sweep).mapped(e.plane()));
    }

    /** Angle travelled counter-clockwise, above 0 up to a full turn. */
    private static double positiveTurn(double angle) {
        double turn = angle % FULL;
        turn = turn < 0 ? turn + FULL : turn;
        return turn < 1e-12 ? FULL : turn;
    }

    private static void ellipse(Entity e, EntityTarget target) {
        Vec3 u = e.point(11);
        Vec3 normal = e.has(230) ? new Vec3(e.number(210, 0), e.number(220, 0), e.number(230, 1)).unit() : Vec3.UP;
        Vec3 v = normal.cross(u).times(e.number(40, 1));
        double start = e.number(41, 0);
        double sweep = positiveTurn(e.number(42, FULL) - start);
        boolean none = u.norm() == 0 || v.norm() == 0;
        target.add(e, none ? List.of() : List.of(new RawArc(e.point(10), u, v, start, sweep)), FULL - sweep < 1e-9);
    }

    private static void lightPolyline(Entity e, EntityTarget target) {
        List<BulgeVertex> vertices = new ArrayList<>();
        double z = e.number(38, 0);
        double x = 0;
        double y = 0;
        double bulge = 0;
        boolean any = false;
        for (int i = 0; i < e.size(); i++) {
            switch (e.code(i)) {
                case 10 -> {
                    if (any) {
                        vertices.add(new BulgeVertex(new Vec3(x, y, z), bulge));
                    }
                    any = true;
                    x = e.number(i);
                    bulge = 0;
                }
                case 20 -> y = e.number(i);
                case 42 -> bulge = e.number(i);
                default -> { }
            }
        }
        if (any) {
            vertices.add(new BulgeVertex(new Vec3(x, y, z), bulge));
        }
        boolean closed = (e.integer(70, 0) & 1) != 0;
        target.add(e, BulgeVertex.edges(vertices, closed, e.plane()), closed);
    }

    private static void insert(Entity e, EntityTarget target) {
        Vec3 scale = new Vec3(scale(e, 41), scale(e, 42), scale(e, 43));
        target.block().inserts.add(new BlockReference(target.style(e), e.text(2, ""), e.plane(), e.point(10), scale,
                e.number(50, 0), Math.max(1, e.integer(70, 1)), Math.max(1, e.integer(71, 1)), e.number(44, 0), e.number(45, 0),
                e.place()));
    }

    private static double scale(Entity e, int code) {
        double s = e.number(code, 1);
        return s == 0 ? 1 : s;
    }

    /** A filled area; its corners come as first, second, fourth, third (DXF Reference, "SOLID" and "TRACE"). */
    private static void filled(Entity e, EntityTarget target) {
        Vec3 third = e.has(12) ? e.point(12) : e.point(11);
        List<BulgeVertex> corners = new ArrayList<>();
        for (Vec3 corner : List.of(e.point(10), e.point(11), e.has(13) ? e.point(13) : third, third)) {
            corners.add(new BulgeVertex(corner, 0));
        }
        target.add(e, BulgeVertex.edges(corners, true, e.plane()), true);
    }
}
