// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.index.strtree.STRtree;

import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/**
 * Punches away what the cuts around several parts would leave loose between them and what is narrower than the rule: the middle
 * of a crossing of shared cuts, the star between rounded corners. No part alone can know of it; it shows on the sheet only.
 *
 * <p>Skeleton less cuts falls into pieces; those that hang on no micro-joint and fit between two parallels nearer than the rule
 * are slivers. A cut beside a sliver is repeated, slid along its own axes until it lies over it; further ones follow while some
 * of it is left, {@value #MOST_HITS} at most. A hit counts only when it enters no part and cuts no joint; a sliver that cannot
 * be punched away whole is left as it is, and the proof warns of it.
 */
public final class SliverCloser {

    private static final int MOST_HITS = 4;
    private static final double DUST_MM2 = 0.05;
    private static final double DUST_MM = 0.03;
    private static final double NEAR_MM = 0.1;

    private final List<Geometry> parts = new ArrayList<>();
    private final STRtree partTree = new STRtree();
    private final STRtree cutTree = new STRtree();
    private final List<Cut> cuts;
    private final List<Point> joints;
    private final double jointMm;
    private final double leastMm;
    private final double cuspMm;

    /**
     * A cut along the outside of a part.
     *
     * @param id   the caller's
     * @param tool which tool
     * @param hit  where, on the sheet
     */
    public record Cut(int id, Tool tool, PartHit hit) {
    }

    private record Placed(Cut cut, Footprint footprint, Geometry area) {
    }

    /**
     * @param shapes   parts on the sheet
     * @param joints   middles of micro-joints on the sheet
     * @param jointMm  width of the widest joint
     * @param cuts     cuts outside the parts
     * @param leastMm  least width of loose waste
     * @param cuspMm   largest height of cusps that stay on parts
     */
    public SliverCloser(List<Shape> shapes, List<Point> joints, double jointMm, List<Cut> cuts, double leastMm, double cuspMm) {
        this.joints = joints;
        this.jointMm = jointMm;
        this.cuts = cuts;
        this.leastMm = leastMm;
        this.cuspMm = cuspMm;
        for (Shape s : shapes) {
            Geometry outer = Areas.of(s.outer());
            parts.add(outer);
            partTree.insert(outer.getEnvelopeInternal(), outer.buffer(-PartGuard.TOLERANCE_MM));
        }
    }

    /** The hits to add, each with the id of the cut that it repeats; empty where no sliver is left. */
    public List<Cut> closing() {
        List<Geometry> areas = new ArrayList<>();
        Map<Tool, Footprint> footprints = new IdentityHashMap<>();
        for (Cut c : cuts) {
            Footprint f = footprints.computeIfAbsent(c.tool(), Footprint::new);
            Geometry area = f.area(c.hit());
            areas.add(area);
            cutTree.insert(area.getEnvelopeInternal(), new Placed(c, f, area));
        }
        List<Cut> added = new ArrayList<>();
        for (Geometry sliver : slivers(pieces(areas))) {
            added.addAll(close(sliver));
        }
        return added;
    }

    /** What is left between the parts: their common box less themselves and less the cuts. */
    private Geometry pieces(List<Geometry> areas) {
        if (areas.isEmpty()) {
            return Areas.union(List.of());
        }
        Envelope box = new Envelope();
        parts.forEach(p -> box.expandToInclude(p.getEnvelopeInternal()));
        List<Geometry> gone = new ArrayList<>(areas);
        parts.forEach(p -> gone.add(p.buffer(cuspMm + DUST_MM)));
        return Areas.difference(Areas.FACTORY.toGeometry(box), Areas.union(gone));
    }

    private List<Geometry> slivers(Geometry pieces) {
        List<Geometry> thin = new ArrayList<>();
        for (int i = 0; i < pieces.getNumGeometries(); i++) {
            Geometry piece = pieces.getGeometryN(i);
            if (thin(piece) && joints.stream().noneMatch(j -> piece.distance(point(j)) < jointMm + cuspMm + NEAR_MM)) {
                thin.add(piece);
            }
        }
        return thin;
    }

    private boolean thin(Geometry piece) {
        if (piece.getArea() < DUST_MM2) {
            return false;
        }
        double width = new MinimumDiameter(piece).getLength();
        return width > DUST_MM && width < leastMm - 1e-6;
    }

    private List<Cut> close(Geometry sliver) {
        List<Cut> added = new ArrayList<>();
        Geometry left = sliver;
        while (!left.isEmpty() && added.size() < MOST_HITS) {
            Optional<Placed> next = best(left);
            if (next.isEmpty()) {
                return List.of();
            }
            added.add(next.get().cut());
            left = worthwhile(Areas.difference(left, next.get().area()));
        }
        return left.isEmpty() ? added : List.of();
    }

    /** The pieces of an area but for dust. */
    private static Geometry worthwhile(Geometry area) {
        List<Geometry> kept = new ArrayList<>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            Geometry piece = area.getGeometryN(i);
            if (piece.getArea() >= DUST_MM2 && new MinimumDiameter(piece).getLength() > DUST_MM) {
                kept.add(piece);
            }
        }
        return Areas.union(kept);
    }

    /** The harmless hit that takes the most of the area. */
    private Optional<Placed> best(Geometry area) {
        Envelope near = new Envelope(area.getEnvelopeInternal());
        near.expandBy(NEAR_MM);
        List<Placed> moved = new ArrayList<>();
        for (Object o : cutTree.query(near)) {
            Placed p = (Placed) o;
            if (p.area().distance(area) < NEAR_MM) {
                moved.addAll(moved(p, area));
            }
        }
        return moved.stream().filter(this::harmless)
                .filter(p -> area.intersection(p.area()).getArea() > DUST_MM2 / 2)
                .max(Comparator.comparingDouble((Placed p) -> Math.rint(1000 * area.intersection(p.area()).getArea()))
                        .thenComparing(p -> -p.cut().id()));
    }

    /** The cut slid along one of its axes, or both, until its middle lies beside or over the middle of the area. */
    private static List<Placed> moved(Placed p, Geometry area) {
        Coordinate c = area.getEnvelopeInternal().centre();
        PartHit hit = p.cut().hit();
        Point own = Pose.at(0, 0, -hit.angleDeg()).apply(new Point(c.x - hit.at().x(), c.y - hit.at().y()));
        List<Placed> moved = new ArrayList<>();
        for (Point by : List.of(new Point(own.x(), 0), new Point(0, own.y()), own)) {
            Point at = Pose.at(hit.at().x(), hit.at().y(), hit.angleDeg()).apply(by);
            PartHit there = new PartHit(at, hit.angleDeg(), hit.role());
            moved.add(new Placed(new Cut(p.cut().id(), p.cut().tool(), there), p.footprint(), p.footprint().area(there)));
        }
        return moved;
    }

    private boolean harmless(Placed p) {
        for (Object part : partTree.query(p.area().getEnvelopeInternal())) {
            if (((Geometry) part).intersects(p.area())) {
                return false;
            }
        }
        return joints.stream().noneMatch(j -> p.footprint().covers(p.cut().hit(), j, jointMm));
    }

    private static Geometry point(Point p) {
        return Areas.FACTORY.createPoint(new Coordinate(p.x(), p.y()));
    }
}
