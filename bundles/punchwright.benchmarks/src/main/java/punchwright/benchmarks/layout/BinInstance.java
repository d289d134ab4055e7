// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import punchwright.engine.nesting.boxes.Bin;
import punchwright.engine.nesting.boxes.BinBound;
import punchwright.engine.nesting.boxes.BinSearch;
import punchwright.engine.nesting.boxes.BoxSet;
import punchwright.engine.nesting.boxes.Work;

/** Rectangles into equal bins. */
record BinInstance(String name, String group, int length, int width, int[] lengths, int[] widths) implements Instance {

    /** A line {@code name;kinds;width;height;w,h[,count];...}. */
    static BinInstance ofLine(String line) {
        String[] f = line.split(";");
        List<int[]> boxes = new ArrayList<>();
        for (int i = 4; i < f.length; i++) {
            String[] p = f[i].split(",");
            addCopies(boxes, Integer.parseInt(p[0].trim()), Integer.parseInt(p[1].trim()),
                    p.length > 2 ? Integer.parseInt(p[2].trim()) : 1);
        }
        return of(f[0], f[0].replaceAll("_?\\d+$", ""), Integer.parseInt(f[2]), Integer.parseInt(f[3]), boxes);
    }

    /** JSON with Name, Objects and Items; the first object is the bin. */
    static BinInstance ofJson(JsonObject json, String group) {
        JsonObject bin = json.getAsJsonArray("Objects").get(0).getAsJsonObject();
        List<int[]> boxes = new ArrayList<>();
        for (JsonElement e : json.getAsJsonArray("Items")) {
            JsonObject o = e.getAsJsonObject();
            addCopies(boxes, o.get("Length").getAsInt(), o.get("Height").getAsInt(), o.get("Demand").getAsInt());
        }
        return of(json.get("Name").getAsString(), group, bin.get("Length").getAsInt(), bin.get("Height").getAsInt(), boxes);
    }

    private static void addCopies(List<int[]> boxes, int l, int w, int count) {
        for (int i = 0; i < count; i++) {
            boxes.add(new int[] {l, w});
        }
    }

    private static BinInstance of(String name, String group, int length, int width, List<int[]> boxes) {
        return new BinInstance(name, group, length, width, boxes.stream().mapToInt(b -> b[0]).toArray(),
                boxes.stream().mapToInt(b -> b[1]).toArray());
    }

    @Override
    public Outcome run(double seconds, long seed, boolean turn) {
        long start = LayoutBench.processorNanos();
        BoxSet boxes = BoxSet.of(lengths, widths, turn);
        int bound = BinBound.of(boxes, length, width);
        List<Bin> bins = BinSearch.pack(boxes, length, width, bound, Work.seconds(seconds, LayoutBench::processorNanos), seed);
        double used = (LayoutBench.processorNanos() - start) / 1e9;
        return new Outcome(Double.NaN, bins.size(), bound, Double.NaN, used, check(boxes, bins));
    }

    /** Every box once, inside, none overlapping another. */
    private String check(BoxSet boxes, List<Bin> bins) {
        boolean[] seen = new boolean[boxes.size()];
        for (Bin bin : bins) {
            for (int i = 0; i < bin.size(); i++) {
                int[] a = corners(boxes, bin, i);
                if (seen[bin.box(i)] || a[0] < 0 || a[1] < 0 || a[2] > length || a[3] > width) {
                    return "box " + bin.box(i) + " twice or outside";
                }
                seen[bin.box(i)] = true;
                for (int j = 0; j < i; j++) {
                    int[] b = corners(boxes, bin, j);
                    if (a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]) {
                        return "boxes " + bin.box(i) + " and " + bin.box(j) + " overlap";
                    }
                }
            }
        }
        boolean[] all = new boolean[seen.length];
        Arrays.fill(all, true);
        return Arrays.equals(seen, all) ? "" : "box missing";
    }

    private static int[] corners(BoxSet boxes, Bin bin, int i) {
        int l = boxes.lengths()[bin.box(i)][bin.turn(i)];
        int w = boxes.widths()[bin.box(i)][bin.turn(i)];
        return new int[] {bin.x(i), bin.y(i), bin.x(i) + l, bin.y(i) + w};
    }
}
