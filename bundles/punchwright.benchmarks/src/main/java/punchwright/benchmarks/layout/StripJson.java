// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;

/** Irregular strip sets in JSON: the width of the strip, and items with demand, allowed angles, and a polygon. */
final class StripJson {

    /** Angles where a set allows every one: steps of 30 degrees. */
    static final List<Double> FREE = angles(12);

    private StripJson() {
    }

    static StripInstance read(JsonObject json, String otherwise) {
        List<StripInstance.Kind> kinds = new ArrayList<>();
        for (JsonElement e : Fields.array(json, "items")) {
            JsonObject o = e.getAsJsonObject();
            int count = Fields.count(o);
            if (count > 0) {
                kinds.add(new StripInstance.Kind(rings(o), allowed(o), count));
            }
        }
        return StripInstance.of(Fields.name(json, otherwise), width(json), kinds);
    }

    private static double width(JsonObject json) {
        JsonElement strip = Fields.find(json, "strip");
        if (strip != null && strip.isJsonObject()) {
            return Fields.number(strip.getAsJsonObject(), "height", "width");
        }
        if (Fields.find(json, "strip_width", "strip_height") == null && Fields.find(json, "objects") != null) {
            throw new IllegalArgumentException("objects of a form of their own; only strips are read for irregular pieces");
        }
        return Fields.number(json, "strip_width", "strip_height");
    }

    private static List<double[][]> rings(JsonObject item) {
        List<double[][]> rings = new ArrayList<>();
        JsonElement shape = Fields.find(item, "shape");
        JsonElement points = Fields.find(item, "polygon");
        JsonElement holes = Fields.find(item, "holes");
        if (points == null && shape != null && shape.isJsonObject()) {
            JsonElement data = Fields.need(shape.getAsJsonObject(), "data", "points");
            points = data.isJsonObject() ? Fields.need(data.getAsJsonObject(), "outer") : data;
            holes = data.isJsonObject() ? Fields.find(data.getAsJsonObject(), "inner", "holes") : holes;
        }
        rings.add(ring(points == null ? shape : points));
        if (holes != null && holes.isJsonArray()) {
            holes.getAsJsonArray().forEach(h -> rings.add(ring(h)));
        }
        return rings;
    }

    private static double[][] ring(JsonElement points) {
        JsonArray list = points.getAsJsonArray();
        double[][] ring = new double[list.size()][];
        for (int i = 0; i < ring.length; i++) {
            ring[i] = point(list.get(i));
        }
        return ring;
    }

    private static double[] point(JsonElement p) {
        return p.isJsonArray()
                ? new double[] {p.getAsJsonArray().get(0).getAsDouble(), p.getAsJsonArray().get(1).getAsDouble()}
                : new double[] {Fields.number(p.getAsJsonObject(), "x"), Fields.number(p.getAsJsonObject(), "y")};
    }

    private static List<Double> allowed(JsonObject item) {
        JsonElement list = Fields.find(item, "orientations", "allowed_orientations", "rotations", "angles");
        if (list == null || !list.isJsonArray()) {
            return FREE;
        }
        List<Double> out = new ArrayList<>();
        list.getAsJsonArray().forEach(a -> out.add(a.getAsDouble()));
        return out.isEmpty() ? List.of(0.0) : out.stream().distinct().toList();
    }

    private static List<Double> angles(int count) {
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            out.add(360.0 * i / count);
        }
        return List.copyOf(out);
    }
}
