// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.util.AffineTransformation;
import punchwright.engine.nesting.boxes.Work;
import punchwright.engine.nesting.shapes.Piece;
import punchwright.engine.nesting.shapes.StripSearch;

/** Polygons into a strip of fixed width, as short as possible. */
record StripInstance(String name, double width, double area, List<Kind> kinds) implements Instance {

    record Kind(List<double[][]> rings, List<Double> anglesDeg, int count) {
    }

    /** Shapes nearer than this share of the strip's width count as touching. */
    private static final double HAIR_SHARE = 1e-6;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Best densities in per cent as recalled from Elkeran, EJOR 231 (2013) 757-769; not verified. Jigsaws: their area. */
    private static final Map<String, Double> BEST = Map.ofEntries(Map.entry("albano", 89.58), Map.entry("dagli", 89.51),
            Map.entry("fu", 92.41), Map.entry("jakobs1", 89.10), Map.entry("jakobs2", 87.73), Map.entry("mao", 85.44),
            Map.entry("marques", 90.59), Map.entry("shapes0", 68.79), Map.entry("shapes1", 76.73), Map.entry("blaz", 84.84),
            Map.entry("shirts", 88.96), Map.entry("swim", 75.94), Map.entry("trousers", 91.00), Map.entry("dighe1", 100.0),
            Map.entry("dighe2", 100.0));

    static StripInstance ofJson(JsonObject json) {
        List<Kind> kinds = new ArrayList<>();
        for (JsonElement e : json.getAsJsonArray("items")) {
            JsonObject o = e.getAsJsonObject();
            List<double[][]> rings = new ArrayList<>();
            rings.add(ring(o.getAsJsonArray("polygon")));
            o.getAsJsonArray("holes").forEach(h -> rings.add(ring(h.getAsJsonArray())));
            List<Double> angles = new ArrayList<>();
            o.getAsJsonArray("orientations").forEach(a -> angles.add(a.getAsDouble()));
            kinds.add(new Kind(rings, angles, o.get("demand").getAsInt()));
        }
        return new StripInstance(json.get("name").getAsString(), json.get("strip_width").getAsDouble(),
                json.get("total_area").getAsDouble(), kinds);
    }

    private static double[][] ring(JsonArray points) {
        double[][] ring = new double[points.size()][];
        for (int i = 0; i < ring.length; i++) {
            JsonArray p = points.get(i).getAsJsonArray();
            ring[i] = new double[] {p.get(0).getAsDouble(), p.get(1).getAsDouble()};
        }
        return ring;
    }

    @Override
    public String group() {
        return "strips";
    }

    @Override
    public Outcome run(double seconds, long seed, boolean turn) {
        long start = LayoutBench.processorNanos();
        List<Piece> pieces = new ArrayList<>();
        List<Kind> kindOf = new ArrayList<>();
        for (Kind kind : kinds) {
            Piece piece = new Piece(kind.rings, kind.anglesDeg, HAIR_SHARE * width);
            for (int i = 0; i < kind.count; i++) {
                pieces.add(piece);
                kindOf.add(kind);
            }
        }
        StripSearch.Strip strip = StripSearch.pack(pieces, width, Work.seconds(seconds, LayoutBench::processorNanos), seed);
        double used = (LayoutBench.processorNanos() - start) / 1e9;
        double best = BEST.containsKey(name) ? 100 * area / (width * BEST.get(name)) : Double.NaN;
        return new Outcome(best, strip.length(), area / width, 100 * area / (width * strip.length()), used,
                check(strip, kindOf));
    }

    /** All pieces inside the strip within three hairs, no two overlapping by more than a sliver of that width. */
    private String check(StripSearch.Strip strip, List<Kind> kindOf) {
        double hair = 3 * HAIR_SHARE * width;
        List<Geometry> placed = new ArrayList<>();
        for (StripSearch.Placed p : strip.placed()) {
            Geometry g = moved(kindOf.get(p.piece()), p);
            Envelope box = g.getEnvelopeInternal();
            if (box.getMinX() < -hair || box.getMinY() < -hair || box.getMaxX() > strip.length() + hair
                    || box.getMaxY() > width + hair) {
                return "piece " + p.piece() + " outside";
            }
            for (int i = 0; i < placed.size(); i++) {
                Geometry o = placed.get(i);
                if (o.getEnvelopeInternal().intersects(box)
                        && o.buffer(0).intersection(g.buffer(0)).getArea() > hair * o.getLength()) {
                    return "pieces " + strip.placed().get(i).piece() + " and " + p.piece() + " overlap";
                }
            }
            placed.add(g);
        }
        return placed.size() == kindOf.size() ? "" : "piece missing";
    }

    private static Geometry moved(Kind kind, StripSearch.Placed p) {
        List<LinearRing> rings = new ArrayList<>();
        for (double[][] ring : kind.rings) {
            Coordinate[] c = new Coordinate[ring.length + 1];
            for (int i = 0; i <= ring.length; i++) {
                c[i] = new Coordinate(ring[i % ring.length][0], ring[i % ring.length][1]);
            }
            rings.add(FACTORY.createLinearRing(c));
        }
        AffineTransformation t = AffineTransformation.rotationInstance(Math.toRadians(p.angleDeg()));
        t.translate(p.x(), p.y());
        return t.transform(FACTORY.createPolygon(rings.get(0), rings.subList(1, rings.size()).toArray(LinearRing[]::new)));
    }
}
