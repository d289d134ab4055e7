// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.press.HitCount;

/**
 * Nibbles away the loose inside of an opening: a raster of one rectangular tool over the loose area, in the opening's direction,
 * with the least overlap; hits that would enter the part or meet nothing loose are left out.
 */
final class Filler {

    /** An opening that would take more hits is not nibbled away. */
    private static final int MOST_HITS = 600;

    private final ToolingRules rules;
    private final PartGuard guard;

    Filler(ToolingRules rules, PartGuard guard) {
        this.rules = rules;
        this.guard = guard;
    }

    List<PartHit> hits(Geometry loose, double angleDeg, UsableTool tool) {
        OptionalDouble angle = AngleFit.angleDeg(tool.tool(), tool.turning(), angleDeg);
        double l = tool.tool().lengthMm();
        double w = tool.tool().widthMm();
        if (!tool.rectangular() || angle.isEmpty() || Math.min(l, w) <= rules.overlapMm() + 1e-6) {
            return List.of();
        }
        Envelope box = box(loose, angleDeg);
        if (box.getArea() > MOST_HITS * (l - rules.overlapMm()) * (w - rules.overlapMm())) {
            return List.of();
        }
        Pose out = Pose.at(0, 0, angleDeg);
        List<PartHit> hits = new ArrayList<>();
        List<Double> ys = raster(box.getMinY(), box.getMaxY(), w);
        for (int row = 0; row < ys.size(); row++) {
            List<Double> xs = raster(box.getMinX(), box.getMaxX(), l);
            for (double x : row % 2 == 0 ? xs : xs.reversed()) {
                PartHit hit = new PartHit(out.apply(new Point(x, ys.get(row))), angle.getAsDouble(), HitRole.NIBBLE);
                Geometry area = tool.footprint().area(hit);
                if (area.intersects(loose) && guard.clear(tool.footprint(), hit)) {
                    hits.add(hit);
                }
            }
        }
        return hits;
    }

    private static Envelope box(Geometry loose, double angleDeg) {
        Pose back = Pose.at(0, 0, -angleDeg);
        Envelope box = new Envelope();
        for (var c : loose.getCoordinates()) {
            Point p = back.apply(new Point(c.x, c.y));
            box.expandToInclude(p.x(), p.y());
        }
        return box;
    }

    private List<Double> raster(double from, double to, double extent) {
        if (to - from <= extent) {
            return List.of((from + to) / 2);
        }
        int n = HitCount.along(to - from, extent, rules.overlapMm());
        double pitch = HitCount.pitchMm(to - from, extent, n);
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            middles.add(from + extent / 2 + i * pitch);
        }
        return middles;
    }
}
