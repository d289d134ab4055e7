// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.sequence;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.holding.Holding;
import punchwright.engine.holding.SheetHit;
import punchwright.engine.press.AxisMotion;
import punchwright.engine.press.Machine;
import punchwright.engine.press.Place;
import punchwright.engine.tooling.Tool;
import punchwright.engine.tooling.ToolFootprint;

/**
 * Where the sheet stands while it is repositioned: the hold-down presses it about the tool axis, so no form may stand there. The
 * last hit's place where that is clear, else the place with the shortest move among rings of points about it, inside the reach
 * of the holding and the spread of the hits. Forms count by their boxes. Diameter of the hold-down: the record's, else that of
 * the largest place (common practice, no source).
 */
final class Parking {

    private static final double STEP_MM = 10;
    private static final int POINTS_ON_RING = 32;

    private record Size(String tool, double angleDeg) {
    }

    private final SequenceJob job;
    private final double radiusMm;
    private final Bounds spread;
    private final Map<Size, Bounds> boxes = new HashMap<>();
    private final List<Bounds> standing = new ArrayList<>();
    private final Map<Integer, Point> parks = new TreeMap<>();
    private final List<Finding> findings = new ArrayList<>();

    Parking(SequenceJob job) {
        this.job = job;
        Bounds b = Bounds.EMPTY;
        for (SheetHit h : job.hits()) {
            b = b.including(h.at());
        }
        spread = b;
        double given = job.machine().formClearance().holdDownMm();
        radiusMm = (given > 0 ? given
                : job.machine().places().stream().mapToDouble(Place::maxToolDiameterMm).max().orElse(0)) / 2;
    }

    Map<Integer, Point> parks() {
        return parks;
    }

    List<Finding> findings() {
        return findings;
    }

    /** Looks at the ends of all holdings of the ordered hits but the last. */
    void run(List<SequencedHit> ordered) {
        for (int i = 0; i < ordered.size(); i++) {
            SheetHit hit = ordered.get(i).hit();
            if (hit.use().tool().standsMm() != 0) {
                standing.add(box(hit));
            }
            int now = ordered.get(i).holding();
            int next = i + 1 < ordered.size() ? ordered.get(i + 1).holding() : now;
            if (now != next && !standing.isEmpty() && !turns(now, next)) {
                park(hit, now);
            }
        }
    }

    private boolean turns(int from, int to) {
        return holding(from).clamps().turned() != holding(to).clamps().turned();
    }

    private Holding holding(int index) {
        return job.holdings().holdings().stream().filter(h -> h.index() == index).findFirst().orElseThrow();
    }

    private void park(SheetHit last, int holding) {
        if (clear(last.at())) {
            return;
        }
        Bounds reach = reach(holding(holding));
        Point best = null;
        double least = Double.POSITIVE_INFINITY;
        double farthest = Math.hypot(spread.width(), spread.height());
        for (double r = STEP_MM; r <= farthest && best == null; r += STEP_MM) {
            for (int i = 0; i < POINTS_ON_RING; i++) {
                Point p = last.at().plus(Point.polar(r, 2 * Math.PI * i / POINTS_ON_RING));
                double seconds = AxisMotion.seconds(job.machine(), p.x() - last.at().x(), p.y() - last.at().y());
                if (seconds < least - 1e-12 && reach.contains(p) && clear(p)) {
                    least = seconds;
                    best = p;
                }
            }
        }
        if (best != null) {
            parks.put(holding, new Point(Math.rint(best.x() * 10) / 10, Math.rint(best.y() * 10) / 10));
        } else {
            findings.add(Finding.at(last.at(), SequenceReason.FORM_HELD_DOWN, "holding " + (holding + 1), holding + 1,
                    radiusMm * 2));
        }
    }

    /** Where the tool axis reaches among the hits of the sheet; of a turned sheet only among the hits of the holding. */
    private Bounds reach(Holding holding) {
        Machine m = job.machine();
        if (!holding.clamps().turned()) {
            return new Bounds(Math.max(spread.minX(), holding.clamps().reachFromMm()), spread.minY(),
                    Math.min(spread.maxX(), holding.clamps().reachToMm()),
                    Math.min(spread.maxY(), Math.min(m.throatDepthMm(), m.travelYMm())));
        }
        Bounds own = Bounds.EMPTY;
        for (SheetHit h : job.hits()) {
            own = holding.hitIds().contains(h.id()) ? own.including(h.at()) : own;
        }
        return own;
    }

    /** A tenth more than the radius, since places are rounded to a tenth. */
    private boolean clear(Point p) {
        double r = radiusMm + 0.1;
        for (Bounds b : standing) {
            double dx = Math.max(0, Math.max(b.minX() - p.x(), p.x() - b.maxX()));
            double dy = Math.max(0, Math.max(b.minY() - p.y(), p.y() - b.maxY()));
            if (dx * dx + dy * dy < r * r) {
                return false;
            }
        }
        return true;
    }

    private Bounds box(SheetHit h) {
        Tool tool = h.use().tool();
        Bounds b = boxes.computeIfAbsent(new Size(tool.id(), h.angleDeg()), k -> {
            Bounds all = Bounds.EMPTY;
            for (Contour c : ToolFootprint.of(tool)) {
                all = all.including(c.moved(Pose.at(0, 0, h.angleDeg())).bounds());
            }
            return all;
        });
        return new Bounds(b.minX() + h.at().x(), b.minY() + h.at().y(), b.maxX() + h.at().x(), b.maxY() + h.at().y());
    }
}
