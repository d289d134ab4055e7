// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.planning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Shape;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.nesting.Layout;
import punchwright.engine.tooling.AngleFit;
import punchwright.engine.tooling.Loading;
import punchwright.engine.tooling.Operation;
import punchwright.engine.tooling.PartHit;
import punchwright.engine.tooling.SliverCloser;
import punchwright.engine.tooling.ToolFootprint;
import punchwright.engine.tooling.ToolUse;

/** Hits of a layout in sheet coordinates; a hit that a neighbour makes already at the same place is made once. */
final class SheetHits {

    /** Places closer than this are the same hit, mm. */
    private static final double SAME_MM = 1e-3;

    private record Spot(int use, long x, long y, long angle, int again) {
    }

    private final Map<String, PartPlan> parts;
    private final Loading loading;
    private final List<SheetHit> hits = new ArrayList<>();
    private final List<Integer> outside = new ArrayList<>();
    private final Set<Spot> made = new HashSet<>();

    SheetHits(Map<String, PartPlan> parts, Loading loading) {
        this.parts = parts;
        this.loading = loading;
    }

    List<SheetHit> on(Layout layout) {
        for (int i = 0; i < layout.placements().size(); i++) {
            Pose pose = layout.placements().get(i).pose();
            for (Operation op : parts.get(layout.placements().get(i).partId()).operations().operations()) {
                addAll(op, pose, i);
            }
        }
        return hits;
    }

    /** Adds what punches away loose slivers between the parts; {@code leastMm}: least width of loose waste. */
    List<SheetHit> without(List<Shape> shapes, List<Point> joints, double jointMm, double leastMm, double cuspMm) {
        List<SliverCloser.Cut> cuts = outside.stream().map(hits::get).map(h -> new SliverCloser.Cut(h.id(), h.use().tool(),
                new PartHit(h.at(), h.angleDeg(), h.role()))).toList();
        for (SliverCloser.Cut c : new SliverCloser(shapes, joints, jointMm, cuts, leastMm, cuspMm).closing()) {
            SheetHit like = hits.get(c.id());
            if (isNew(like.use(), c.hit().at(), like.angleDeg(), 0)) {
                hits.add(new SheetHit(hits.size(), like.use(), c.hit().at(), like.angleDeg(), like.role(), like.operation(),
                        like.placement()));
            }
        }
        return hits;
    }

    private void addAll(Operation op, Pose pose, int placement) {
        for (int i = 0; i < op.hits().size(); i++) {
            PartHit hit = op.hits().get(i);
            int again = op.tool().shape().forms() ? Collections.frequency(op.hits().subList(0, i), hit) : 0;
            Point at = pose.apply(hit.at());
            double angle = ToolDemand.roundedDeg(pose.applyAngleDeg(hit.angleDeg()));
            ToolUse use = use(op, angle);
            double set = use.turning() ? AngleFit.canonicalDeg(angle, ToolFootprint.symmetryOrder(use.tool()))
                    : use.setAngleDeg();
            if (isNew(use, at, set, again)) {
                if (!op.feature().isOpening() && !op.tool().shape().forms()) {
                    outside.add(hits.size());
                }
                hits.add(new SheetHit(hits.size(), use, at, set, hit.role(), op.number(), placement));
            }
        }
    }

    /** @param again  how often the form was hit there before */
    private boolean isNew(ToolUse use, Point at, double angleDeg, int again) {
        long x = Math.round(at.x() / SAME_MM);
        long y = Math.round(at.y() / SAME_MM);
        long a = Math.round(angleDeg / SAME_MM);
        for (long dx = -1; dx <= 1; dx++) {
            for (long dy = -1; dy <= 1; dy++) {
                if (made.contains(new Spot(use.number(), x + dx, y + dy, a, again))) {
                    return false;
                }
            }
        }
        return made.add(new Spot(use.number(), x, y, a, again));
    }

    private ToolUse use(Operation op, double angleDeg) {
        return loading.uses().stream()
                .filter(u -> u.tool().id().equals(op.tool().id()))
                .filter(u -> u.turning()
                        || AngleFit.same(u.setAngleDeg(), angleDeg, ToolFootprint.symmetryOrder(u.tool())))
                .findFirst().orElseThrow(() -> new IllegalStateException(
                        "tool " + op.tool().name() + " is not loaded at " + angleDeg + " degrees though loading found no error"));
    }
}
