// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * Settings of the clamps on the carriage to try: evenly spread first, then, where hits lie near the clamped edge,
 * combinations of a raster and of the positions that just clear such a hit, from the most even outward.
 */
final class ClampSettings {

    private static final int MOST = 3000;

    private final Rig rig;
    private final double low;
    private final double high;

    ClampSettings(Rig rig) {
        this.rig = rig;
        low = rig.minCenterMm;
        high = Math.min(rig.maxCenterMm, low + Math.max(0, rig.lengthMm - rig.clampWidthMm));
    }

    double[] even() {
        int k = rig.clampCount;
        double[] u = new double[k];
        for (int i = 0; i < k; i++) {
            u[i] = k == 1 ? (low + high) / 2 : low + (high - low) * i / (k - 1);
        }
        return u;
    }

    /** All settings to try, the even one first. */
    List<double[]> all() {
        double[] even = even();
        List<double[]> settings = new ArrayList<>();
        if (rig.needs.stream().anyMatch(n -> n.nearEdge()[0] || n.nearEdge()[1])) {
            combine(positions(), 0, new double[rig.clampCount], 0, settings);
            settings.sort(Comparator.comparingDouble(s -> deviation(s, even)));
        }
        settings.add(0, even);
        return settings;
    }

    private static double deviation(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += Math.abs(a[i] - b[i]);
        }
        return sum;
    }

    private List<Double> positions() {
        int k = rig.clampCount;
        int raster = k == 1 ? 200 : k == 2 ? 40 : k == 3 ? 18 : k == 4 ? 12 : 9;
        TreeSet<Double> positions = new TreeSet<>();
        for (int i = 0; i <= raster; i++) {
            positions.add(low + (high - low) * i / raster);
        }
        for (int i = 1; i < k; i++) {
            positions.add(Math.min(high, low + i * rig.spacingMm));
            positions.add(Math.max(low, high - i * rig.spacingMm));
        }
        List<Double> clearing = clearing();
        int most = k <= 2 ? 36 : k == 3 ? 8 : 4;
        for (int i = 0; i < clearing.size(); i += Math.max(1, clearing.size() / most)) {
            positions.add(clearing.get(i));
        }
        return List.copyOf(positions);
    }

    /** Centres that just clear a hit near the edge while the sheet stands at either end of travel or clamps. */
    private List<Double> clearing() {
        TreeSet<Double> all = new TreeSet<>();
        double[] zeros = {0, rig.lengthMm - rig.travelMm, rig.clampWidthMm / 2 - low, rig.lengthMm - rig.clampWidthMm / 2 - high};
        for (Need n : rig.needs) {
            for (int side = 0; side < 2; side++) {
                for (double zero : n.nearEdge()[side] ? zeros : new double[0]) {
                    all.add(n.x()[side] - zero - n.keepMm());
                    all.add(n.x()[side] - zero + n.keepMm());
                }
            }
        }
        return all.stream().filter(u -> u >= low && u <= high).toList();
    }

    private void combine(List<Double> positions, int from, double[] chosen, int n, List<double[]> out) {
        if (n == chosen.length) {
            out.add(Arrays.copyOf(chosen, n));
            return;
        }
        for (int i = from; i < positions.size() && out.size() < MOST; i++) {
            if (n == 0 || positions.get(i) - chosen[n - 1] >= rig.spacingMm - 1e-9) {
                chosen[n] = positions.get(i);
                combine(positions, i + 1, chosen, n + 1, out);
            }
        }
    }
}
