// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;
import java.util.Optional;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/** Which segment of an edge no tool can cut, and why: a small inside radius, an acute corner, a short or a tight place. */
final class EdgeWhy {

    private static final double RIGHT_ANGLE_DEG = 90.5;

    private final ToolingJob job;
    private final List<UsableTool> tools;
    private final PartGuard guard;

    EdgeWhy(ToolingJob job, List<UsableTool> tools) {
        this.job = job;
        this.tools = tools;
        guard = new PartGuard(job.features().shape());
    }

    /** The first segment without a harmless way; empty when each has one of its own. */
    Optional<Finding> reason(Feature feature, String subject) {
        EdgePath path = EdgePath.of(feature, job.features().shape());
        EdgeCutter cutter = new EdgeCutter(job.rules());
        for (int i = 0; i < path.segments().size(); i++) {
            int index = i;
            boolean cut = tools.stream().anyMatch(t -> cutter.proposals(path, index, List.of(), t).stream()
                    .anyMatch(p -> p.variants().stream().anyMatch(v -> guard.clear(t.footprint(), v))));
            if (!cut) {
                return Optional.of(reason(path, i, subject));
            }
        }
        return acute(path, subject);
    }

    private Finding reason(EdgePath path, int i, String subject) {
        Segment s = path.segments().get(i);
        Point at = s.pointAt(0.5);
        if (s instanceof Arc arc && arc.sweepRad() < 0) {
            double smallest = tools.stream().filter(UsableTool::round).mapToDouble(t -> t.tool().lengthMm()).min().orElse(0);
            if (smallest == 0 || smallest / 2 > arc.radiusMm() + 0.006) {
                return Finding.at(at, ToolingReason.INSIDE_RADIUS, subject, arc.radiusMm(), 2 * arc.radiusMm(), smallest);
            }
        }
        Optional<Finding> acute = acute(path, subject);
        if (acute.isPresent()) {
            return acute.get();
        }
        double shortest = tools.stream().filter(UsableTool::rectangular)
                .mapToDouble(t -> Math.min(t.tool().lengthMm(), t.tool().widthMm())).min().orElse(0);
        boolean closedIn = path.startOf(i) == EdgePath.End.FLUSH && path.endOf(i) == EdgePath.End.FLUSH;
        if (closedIn && !(s instanceof Arc) && s.lengthMm() < shortest - 1e-6) {
            return Finding.at(at, ToolingReason.SHORT_EDGE, subject, s.lengthMm(), shortest);
        }
        return Finding.at(at, ToolingReason.TIGHT, subject, at.x(), at.y());
    }

    /** A corner where the waste ends in less than a right angle. */
    private static Optional<Finding> acute(EdgePath path, String subject) {
        for (int i = 0; i < path.segments().size(); i++) {
            double waste = 180 + path.turnAtEndDeg(i);
            if (waste < RIGHT_ANGLE_DEG - 1) {
                Point corner = path.segments().get(i).end();
                return Optional.of(Finding.at(corner, ToolingReason.ACUTE_CORNER, subject, waste, corner.x(), corner.y()));
            }
        }
        return Optional.empty();
    }
}
