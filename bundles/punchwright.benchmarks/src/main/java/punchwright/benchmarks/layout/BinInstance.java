// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import punchwright.engine.nesting.boxes.Bin;
import punchwright.engine.nesting.boxes.BinBound;
import punchwright.engine.nesting.boxes.BinSearch;
import punchwright.engine.nesting.boxes.BoxSet;
import punchwright.engine.nesting.boxes.Work;

/** Rectangles into equal bins. Sides are whole numbers; sides with decimals are scaled. */
record BinInstance(String name, String group, int length, int width, int[] lengths, int[] widths) implements Instance {

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** A line {@code name;kinds;width;height;w,h[,count];...}. */
    static BinInstance ofLine(String line) {
        String[] f = line.split(";");
        if (f.length < 5) {
            throw new IllegalArgumentException(f.length + " fields");
        }
        List<double[]> boxes = new ArrayList<>();
        for (int i = 4; i < f.length; i++) {
            String[] p = f[i].split(",");
            addCopies(boxes, Double.parseDouble(p[0].trim()), Double.parseDouble(p[1].trim()),
                    p.length > 2 ? Integer.parseInt(p[2].trim()) : 1);
        }
        int kinds = Integer.parseInt(f[1].trim());
        if (kinds != f.length - 4) {
            throw new IllegalArgumentException(kinds + " kinds said, " + (f.length - 4) + " there");
        }
        return of(f[0].trim(), f[0].trim().replaceAll("_?\\d+$", ""), Double.parseDouble(f[2]), Double.parseDouble(f[3]), boxes);
    }

    /** JSON with Name, Objects and Items; of several objects the largest is the bin. */
    static BinInstance ofJson(JsonObject json, String group, String otherwise) {
        JsonArray objects = Fields.array(json, "objects");
        if (objects.isEmpty()) {
            throw new IllegalArgumentException("no object");
        }
        double[] bin = {0, 0};
        for (JsonElement e : objects) {
            double[] o = sides(e.getAsJsonObject());
            bin = o[0] * o[1] > bin[0] * bin[1] ? o : bin;
        }
        List<double[]> boxes = new ArrayList<>();
        for (JsonElement e : Fields.array(json, "items")) {
            double[] s = sides(e.getAsJsonObject());
            addCopies(boxes, s[0], s[1], Fields.count(e.getAsJsonObject()));
        }
        return of(Fields.name(json, otherwise), group, bin[0], bin[1], boxes);
    }

    private static double[] sides(JsonObject o) {
        boolean length = Fields.find(o, "length") != null;
        return new double[] {length ? Fields.number(o, "length") : Fields.number(o, "width"),
            length ? Fields.number(o, "height", "width") : Fields.number(o, "height")};
    }

    private static void addCopies(List<double[]> boxes, double l, double w, int count) {
        for (int i = 0; i < count; i++) {
            boxes.add(new double[] {l, w});
        }
    }

    private static BinInstance of(String name, String group, double length, double width, List<double[]> boxes) {
        int decimals = Math.max(decimals(length), decimals(width));
        for (double[] b : boxes) {
            decimals = Math.max(decimals, Math.max(decimals(b[0]), decimals(b[1])));
            if (!(b[0] > 0 && b[1] > 0)) {
                throw new IllegalArgumentException("an item is " + b[0] + " x " + b[1]);
            }
        }
        if (!(length > 0 && width > 0) || boxes.isEmpty()) {
            throw new IllegalArgumentException("the bin is " + length + " x " + width + ", items " + boxes.size());
        }
        double scale = Math.pow(10, Math.min(6, decimals));
        String known = Published.group(name);
        return new BinInstance(name, known == null ? group : known, whole(length, scale), whole(width, scale),
                boxes.stream().mapToInt(b -> whole(b[0], scale)).toArray(),
                boxes.stream().mapToInt(b -> whole(b[1], scale)).toArray());
    }

    private static int decimals(double v) {
        return Math.max(0, BigDecimal.valueOf(v).stripTrailingZeros().scale());
    }

    private static int whole(double v, double scale) {
        return Math.toIntExact(Math.round(v * scale));
    }

    @Override
    public Outcome run(double seconds, long seed, boolean turn) {
        long start = LayoutBench.processorNanos();
        BoxSet boxes = BoxSet.of(lengths, widths, turn);
        int bound = BinBound.of(boxes, length, width);
        List<Bin> bins = BinSearch.pack(boxes, length, width, bound, Work.seconds(seconds, LayoutBench::processorNanos), seed);
        double used = (LayoutBench.processorNanos() - start) / 1e9;
        return new Outcome(Double.NaN, bins.size(), bound, Double.NaN, used, fault(bins, turn));
    }

    /** Every box once with its own sides, inside, no two with common inner points; judged with other code than the search. */
    private String fault(List<Bin> bins, boolean turn) {
        Geometry sheet = FACTORY.toGeometry(new Envelope(0, length, 0, width));
        boolean[] seen = new boolean[lengths.length];
        int count = 0;
        for (Bin bin : bins) {
            List<Geometry> placed = new ArrayList<>();
            for (int i = 0; i < bin.size(); i++) {
                int box = bin.box(i);
                boolean turned = bin.turn(i) == 1;
                if (seen[box] || turned && !turn) {
                    return "box " + box + " twice, or turned";
                }
                seen[box] = true;
                count++;
                int l = turned ? widths[box] : lengths[box];
                int w = turned ? lengths[box] : widths[box];
                Geometry g = FACTORY.toGeometry(new Envelope(bin.x(i), bin.x(i) + l, bin.y(i), bin.y(i) + w));
                if (!sheet.covers(g)) {
                    return "box " + box + " outside";
                }
                if (placed.stream().anyMatch(o -> o.getEnvelopeInternal().intersects(g.getEnvelopeInternal())
                        && o.relate(g, "T********"))) {
                    return "box " + box + " overlaps another";
                }
                placed.add(g);
            }
        }
        return count == lengths.length ? "" : "boxes placed " + count + ", asked for " + lengths.length;
    }
}
