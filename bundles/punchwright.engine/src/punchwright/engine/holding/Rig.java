// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.holding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import punchwright.engine.press.Clamps;
import punchwright.engine.press.FormingRules;
import punchwright.engine.press.Machine;
import punchwright.engine.tooling.Tool;

/** The job in the terms of the search: limits of machine and sheet, and the hits' needs, alike ones once, ordered by x. */
final class Rig {

    private record Alike(double x, boolean reached0, boolean reached1, boolean near0, boolean near1, double keepMm) {
    }

    private record Size(String tool, double angleDeg) {
    }

    final double travelMm;
    final double lengthMm;
    final double reachYMm;
    final double clampWidthMm;
    final double spacingMm;
    final double minCenterMm;
    final double maxCenterMm;
    final int clampCount;
    final List<Need> needs = new ArrayList<>();
    final Map<SheetHit, Need> needOf = new IdentityHashMap<>();
    final List<SheetHit> hits;
    final double widthMm;
    final double clampDepthMm;
    /** Where forms that may not be clamped lie; marks and countersinks may. */
    final Map<SheetHit, Footprint> standing = new LinkedHashMap<>();

    Rig(HoldingJob job) {
        Machine machine = job.machine();
        hits = job.hits();
        Clamps c = machine.clamps();
        travelMm = machine.travelXMm();
        lengthMm = job.sheetLengthMm();
        widthMm = job.sheetWidthMm();
        clampDepthMm = c.depthMm();
        reachYMm = Math.min(machine.throatDepthMm(), machine.travelYMm());
        clampWidthMm = c.widthMm();
        spacingMm = Math.max(c.minSpacingMm(), c.widthMm());
        minCenterMm = c.minCenterMm();
        maxCenterMm = c.maxCenterMm();
        clampCount = Math.min(c.count(), fitting());
        gather(job, c);
    }

    /** Clamps that find room on the sheet side by side. */
    private int fitting() {
        double room = Math.min(maxCenterMm - minCenterMm, lengthMm - clampWidthMm);
        return lengthMm < clampWidthMm || room < 0 ? 0 : spacingMm > 0 ? (int) Math.floor(room / spacingMm + 1e-9) + 1
                : Integer.MAX_VALUE;
    }

    private void gather(HoldingJob job, Clamps c) {
        Map<Size, Footprint> sizes = new LinkedHashMap<>();
        Map<Alike, Need> alike = new LinkedHashMap<>();
        for (SheetHit hit : job.hits()) {
            Footprint f = sizes.computeIfAbsent(new Size(hit.use().tool().id(), hit.angleDeg()),
                    s -> Footprint.of(hit.use().tool(), hit.angleDeg()));
            if (hit.use().tool().standsMm() != 0) {
                standing.put(hit, f);
            }
            double y0 = hit.at().y();
            double y1 = job.sheetWidthMm() - y0;
            double keepX = keepMm(hit.use().tool(), f.halfXMm(), c.deadZoneMm());
            double near = c.depthMm() + keepMm(hit.use().tool(), f.halfYMm(), c.deadZoneMm()) - 1e-6;
            Alike key = new Alike(hit.at().x(), reached(y0), reached(y1), y0 < near, y1 < near,
                    y0 < near || y1 < near ? keepX + c.widthMm() / 2 : 0);
            needOf.put(hit, alike.computeIfAbsent(key, k -> new Need(new double[] {k.x, lengthMm - k.x},
                    new boolean[] {k.reached0, k.reached1}, new boolean[] {k.near0, k.near1}, k.keepMm)));
        }
        needs.addAll(alike.values());
        needs.sort(Comparator.comparingDouble(n -> n.x()[0]));
    }

    /** From the tool axis to a clamp: the punch and the dead zone; of a forming tool its die where that reaches farther. */
    private static double keepMm(Tool tool, double halfMm, double deadZoneMm) {
        double punch = halfMm + deadZoneMm;
        return tool.shape().forms() && tool.room().bodyMm() > 0
                ? Math.max(punch, FormingRules.toClampMm(tool.room().bodyMm(), deadZoneMm)) : punch;
    }

    private boolean reached(double y) {
        return y <= reachYMm + 1e-6;
    }

    /** The clamp, by number from 0, that would stand on the form with the carriage's zero at sheet x {@code zero}; -1 for none. */
    int clampOn(SheetHit form, int side, double zero, double[] clamps) {
        Footprint f = standing.get(form);
        double x = side == 0 ? form.at().x() : lengthMm - form.at().x();
        double y = side == 0 ? form.at().y() : widthMm - form.at().y();
        for (int i = 0; f != null && y - f.halfYMm() < clampDepthMm - 1e-6 && i < clamps.length; i++) {
            if (Math.abs(x - zero - clamps[i]) < f.halfXMm() + clampWidthMm / 2 - 1e-6) {
                return i;
            }
        }
        return -1;
    }

    /** Least sheet x at the carriage's zero with which the first clamp still holds the sheet. */
    double leastZero(double[] clamps) {
        return clampWidthMm / 2 - clamps[0];
    }

    /** Largest sheet x at the carriage's zero with which the last clamp still holds the sheet. */
    double largestZero(double[] clamps) {
        return lengthMm - clampWidthMm / 2 - clamps[clamps.length - 1];
    }
}
