// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.distance.DistanceOp;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Flattening;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;

/**
 * Decides whether a nesting keeps its job's rules, with JTS and no code of the nesting package: parts inside the usable
 * region, webs held, no overlap, allowed angles, counts, stock and machine limits. Lengths are checked to 0.001 mm.
 */
final class LayoutCheck {

    private static final double TOLERANCE_MM = 1e-3;
    private static final double CHORD_MM = 5e-4;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private record Placed(NestPart part, Geometry geometry) {
    }

    private final NestingJob job;
    private final Map<String, NestPart> parts = new LinkedHashMap<>();
    private final Map<String, Geometry> shapes = new LinkedHashMap<>();
    private final List<String> faults = new ArrayList<>();

    private LayoutCheck(NestingJob job) {
        this.job = job;
        for (NestPart part : job.parts()) {
            parts.put(part.id(), part);
            shapes.put(part.id(), geometry(part.shape()));
        }
    }

    /** Everything wrong, in words; empty when the nesting is valid. {@code unmade} pieces are allowed to be missing. */
    static List<String> faults(NestingJob job, Nesting nesting, Map<String, Integer> unmade) {
        LayoutCheck check = new LayoutCheck(job);
        check.counts(nesting, unmade);
        check.stock(nesting);
        nesting.layouts().forEach(check::layout);
        return check.faults;
    }

    private void counts(Nesting nesting, Map<String, Integer> unmade) {
        Map<String, Integer> made = new LinkedHashMap<>();
        for (Layout layout : nesting.layouts()) {
            if (layout.runs() < 1 || layout.placements().isEmpty()) {
                faults.add("layout without run or part");
            }
            layout.placements().forEach(p -> made.merge(p.partId(), layout.runs(), Integer::sum));
        }
        for (NestPart part : job.parts()) {
            int expected = part.quantity() - unmade.getOrDefault(part.id(), 0);
            if (made.getOrDefault(part.id(), 0) != expected) {
                faults.add("part " + part.id() + ": " + made.getOrDefault(part.id(), 0) + " made, expected " + expected);
            }
        }
    }

    private void stock(Nesting nesting) {
        Map<String, Integer> used = new LinkedHashMap<>();
        nesting.layouts().forEach(l -> used.merge(l.sheet().id(), l.runs(), Integer::sum));
        for (SheetOffer offer : job.offers()) {
            if (used.getOrDefault(offer.id(), 0) > offer.quantity()) {
                faults.add("sheet " + offer.id() + ": more used than on hand");
            }
            boolean fits = offer.lengthMm() <= job.maxLengthMm() && offer.widthMm() <= job.maxWidthMm()
                    && offer.lengthMm() * offer.widthMm() * job.massPerMm2Kg() <= job.maxMassKg();
            if (used.containsKey(offer.id()) && !fits) {
                faults.add("sheet " + offer.id() + ": beyond the machine");
            }
        }
    }

    private void layout(Layout layout) {
        List<Placed> placed = new ArrayList<>();
        for (Placement p : layout.placements()) {
            NestPart part = parts.get(p.partId());
            if (part.anglesDeg().stream().noneMatch(a -> Math.abs(Math.IEEEremainder(a - p.pose().angleDeg(), 360)) < 1e-9)
                    || p.pose().mirrored()) {
                faults.add("part " + part.id() + ": angle " + p.pose().angleDeg() + " not allowed");
            }
            placed.add(new Placed(part, moved(shapes.get(part.id()), p.pose())));
        }
        placed.forEach(p -> inside(p, layout.sheet()));
        pairs(placed);
    }

    private void inside(Placed p, SheetOffer sheet) {
        Envelope box = p.geometry.getEnvelopeInternal();
        double below = Math.max(job.edgeMm(), job.clampStripMm());
        if (box.getMinX() < job.edgeMm() - TOLERANCE_MM || box.getMinY() < below - TOLERANCE_MM
                || box.getMaxX() > sheet.lengthMm() - job.edgeMm() + TOLERANCE_MM
                || box.getMaxY() > sheet.widthMm() - job.edgeMm() + TOLERANCE_MM) {
            faults.add("part " + p.part.id() + " outside the usable region: " + box);
        }
    }

    @SuppressWarnings("unchecked")
    private void pairs(List<Placed> placed) {
        double web = job.parts().stream().mapToDouble(NestPart::webMm).max().orElse(0);
        STRtree tree = new STRtree();
        for (int i = 0; i < placed.size(); i++) {
            tree.insert(placed.get(i).geometry.getEnvelopeInternal(), i);
        }
        for (int i = 0; i < placed.size(); i++) {
            Envelope near = new Envelope(placed.get(i).geometry.getEnvelopeInternal());
            near.expandBy(web);
            for (int j : (List<Integer>) tree.query(near)) {
                if (j > i) {
                    pair(placed.get(i), placed.get(j));
                }
            }
        }
    }

    private void pair(Placed a, Placed b) {
        double web = Math.max(a.part.webMm(), b.part.webMm());
        if (web > TOLERANCE_MM) {
            double distance = new DistanceOp(a.geometry, b.geometry).distance();
            if (distance < web - TOLERANCE_MM) {
                faults.add("parts " + a.part.id() + " and " + b.part.id() + ": web " + distance + " mm, least " + web);
            }
        } else if (a.geometry.buffer(-TOLERANCE_MM).intersects(b.geometry.buffer(-TOLERANCE_MM))) {
            faults.add("parts " + a.part.id() + " and " + b.part.id() + " overlap");
        }
    }

    static Geometry geometry(Shape shape) {
        return FACTORY.createPolygon(ring(shape.outer()), shape.holes().stream().map(LayoutCheck::ring)
                .toArray(LinearRing[]::new));
    }

    private static LinearRing ring(Contour contour) {
        List<Coordinate> points = new ArrayList<>();
        for (Point p : Flattening.points(contour, CHORD_MM)) {
            points.add(new Coordinate(p.x(), p.y()));
        }
        points.add(points.get(0).copy());
        return FACTORY.createLinearRing(points.toArray(Coordinate[]::new));
    }

    private static Geometry moved(Geometry geometry, Pose pose) {
        AffineTransformation t = AffineTransformation.rotationInstance(Math.toRadians(pose.angleDeg()));
        t.translate(pose.x(), pose.y());
        return t.transform(geometry);
    }
}
