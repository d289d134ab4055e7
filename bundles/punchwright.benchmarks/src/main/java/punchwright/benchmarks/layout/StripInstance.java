// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.GeometryFixer;
import punchwright.engine.nesting.boxes.Work;
import punchwright.engine.nesting.shapes.Piece;
import punchwright.engine.nesting.shapes.StripBound;
import punchwright.engine.nesting.shapes.StripSearch;

/** Polygons into a strip of fixed width, as short as possible. */
record StripInstance(String name, double width, double area, List<Kind> kinds) implements Instance {

    record Kind(List<double[][]> rings, List<Double> anglesDeg, int count) {
    }

    /** Shapes nearer than this share of the strip's width count as touching. */
    static final double HAIR_SHARE = 1e-6;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Best densities in per cent as recalled from Elkeran, EJOR 231 (2013) 757-769; not verified. Jigsaws: their area. */
    private static final Map<String, Double> BEST = Map.ofEntries(Map.entry("albano", 89.58), Map.entry("dagli", 89.51),
            Map.entry("fu", 92.41), Map.entry("jakobs1", 89.10), Map.entry("jakobs2", 87.73), Map.entry("mao", 85.44),
            Map.entry("marques", 90.59), Map.entry("shapes0", 68.79), Map.entry("shapes1", 76.73), Map.entry("blaz", 84.84),
            Map.entry("shapes2", 84.84), Map.entry("shirts", 88.96), Map.entry("swim", 75.94), Map.entry("trousers", 91.00),
            Map.entry("dighe1", 100.0), Map.entry("dighe2", 100.0));

    /**
     * A set whose polygons are made simple where their rings cross.
     *
     * @throws IllegalArgumentException naming the item or width that is wrong
     */
    static StripInstance of(String name, double width, List<Kind> kinds) {
        if (!(width > 0) || Double.isInfinite(width)) {
            throw new IllegalArgumentException("the strip's width is " + width + "; a number above 0 is expected");
        }
        if (kinds.isEmpty()) {
            throw new IllegalArgumentException("no piece is asked for");
        }
        List<Kind> simple = new ArrayList<>();
        double area = 0;
        for (int k = 0; k < kinds.size(); k++) {
            Kind kind = kinds.get(k);
            Geometry g;
            try {
                g = polygon(kind.rings);
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException("item " + k + ": " + e.getMessage(), e);
            }
            if (!g.isValid()) {
                g = GeometryFixer.fix(g);
                if (g.isEmpty()) {
                    throw new IllegalArgumentException("item " + k + ": the polygon has no area");
                }
                if (!(g instanceof Polygon p)) {
                    throw new IllegalArgumentException("item " + k + ": the polygon crosses itself");
                }
                kind = new Kind(rings(p), kind.anglesDeg, kind.count);
            }
            if (!(g.getArea() > 0)) {
                throw new IllegalArgumentException("item " + k + ": the polygon has no area");
            }
            area += kind.count * g.getArea();
            simple.add(kind);
        }
        return new StripInstance(name, width, area, simple);
    }

    static Polygon polygon(List<double[][]> rings) {
        List<LinearRing> out = new ArrayList<>();
        for (double[][] ring : rings) {
            Coordinate[] c = new Coordinate[ring.length + 1];
            for (int i = 0; i <= ring.length; i++) {
                c[i] = new Coordinate(ring[i % ring.length][0], ring[i % ring.length][1]);
            }
            out.add(FACTORY.createLinearRing(c));
        }
        return FACTORY.createPolygon(out.get(0), out.subList(1, out.size()).toArray(LinearRing[]::new));
    }

    private static List<double[][]> rings(Polygon p) {
        List<double[][]> out = new ArrayList<>();
        out.add(points(p.getExteriorRing()));
        for (int i = 0; i < p.getNumInteriorRing(); i++) {
            out.add(points(p.getInteriorRingN(i)));
        }
        return out;
    }

    private static double[][] points(LinearRing ring) {
        double[][] out = new double[ring.getNumPoints() - 1][];
        for (int i = 0; i < out.length; i++) {
            out[i] = new double[] {ring.getCoordinateN(i).x, ring.getCoordinateN(i).y};
        }
        return out;
    }

    @Override
    public String group() {
        return "strips";
    }

    @Override
    public Outcome run(double seconds, long seed, boolean turn) {
        long start = LayoutBench.processorNanos();
        Work work = Work.seconds(seconds, LayoutBench::processorNanos);
        List<Piece> pieces = new ArrayList<>();
        List<Kind> kindOf = new ArrayList<>();
        for (Kind kind : kinds) {
            Piece piece = new Piece(kind.rings, kind.anglesDeg, HAIR_SHARE * width);
            for (int i = 0; i < kind.count; i++) {
                pieces.add(piece);
                kindOf.add(kind);
            }
        }
        StripSearch.Strip strip = StripSearch.pack(pieces, width, work, seed);
        double used = (LayoutBench.processorNanos() - start) / 1e9;
        Double density = BEST.get(name.toLowerCase(Locale.ROOT));
        double best = density == null ? Double.NaN : 100 * area / (width * density);
        return new Outcome(best, strip.length(), StripBound.of(pieces, width), 100 * area / (width * strip.length()), used,
                new StripCheck(width, strip, kindOf).fault());
    }
}
