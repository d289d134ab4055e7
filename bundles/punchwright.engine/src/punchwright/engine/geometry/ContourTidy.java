// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The same contour in as few segments as there are edges: pieces of one line joined, arcs found again in pieces of arcs and
 * in chains of short lines, pieces shorter than the tolerance dropped, a full circle as one arc from angle 0, lines drawn to
 * meet their neighbours. Corners of the drawn contour move by no more than the tolerance, the middles of the short lines of
 * an arc by twice that.
 */
public final class ContourTidy {

    /** A last run as short as this may be the beginning of the first. */
    private static final int FEW_PIECES = 16;

    private final double toleranceMm;

    private ContourTidy(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    /** @param toleranceMm greatest shift of any point of the contour, above 0 */
    public static Contour tidy(Contour contour, double toleranceMm) {
        double diameter = contour.circleDiameterMm(toleranceMm);
        if (diameter > 0) {
            return circle(contour, contour);
        }
        return new ContourTidy(toleranceMm).run(contour);
    }

    private static Contour circle(Contour direction, Contour found) {
        Arc arc = (Arc) found.segments().get(0);
        Contour circle = Contour.circle(arc.center(), 2 * arc.radiusMm());
        return direction.isCounterClockwise() ? circle : circle.reversed();
    }

    private Contour run(Contour contour) {
        List<Segment> kept = withoutShort(contour.segments());
        if (kept.size() < 2) {
            return contour;
        }
        Arc whole = new EdgeRuns(kept, toleranceMm).wholeCircle();
        if (whole != null) {
            return circle(contour, new Contour(List.of(whole)));
        }
        List<Segment> fromCorner = fromCorner(kept);
        List<Segment> fromEdge = turned(fromCorner, new EdgeRuns(fromCorner, toleranceMm).sureStart());
        EdgeRuns runs = new EdgeRuns(fromEdge, toleranceMm);
        List<Segment> merged = runs.merged();
        if (runs.lastRunPieces() < FEW_PIECES && merged.size() > 2) {
            merged = new EdgeRuns(turned(fromEdge, fromEdge.size() - runs.lastRunPieces()), toleranceMm).merged();
        }
        return new Contour(meeting(merged));
    }

    /** Drops pieces below the tolerance; what they bridged stays within the tolerance. */
    private List<Segment> withoutShort(List<Segment> segments) {
        List<Segment> kept = new ArrayList<>();
        Point dropped = null;
        for (Segment s : segments) {
            if (s.lengthMm() > toleranceMm) {
                kept.add(dropped != null && s instanceof Line ? new Line(dropped, s.end()) : s);
                dropped = null;
            } else if (dropped == null) {
                dropped = s.start();
            }
        }
        return kept;
    }

    /** Turned round so that it begins at its sharpest corner. */
    private static List<Segment> fromCorner(List<Segment> segments) {
        int n = segments.size();
        int sharpest = 0;
        double least = 2;
        for (int i = 0; i < n; i++) {
            double cosine = segments.get((i + n - 1) % n).tangentAt(1).dot(segments.get(i).tangentAt(0));
            if (cosine < least - 1e-9) {
                least = cosine;
                sharpest = i;
            }
        }
        return turned(segments, sharpest);
    }

    private static List<Segment> turned(List<Segment> segments, int start) {
        List<Segment> turned = new ArrayList<>(segments.subList(start, segments.size()));
        turned.addAll(segments.subList(0, start));
        return turned;
    }

    /** Lines end where their neighbours begin; between two lines half way. Arcs stay as they are. */
    private static List<Segment> meeting(List<Segment> segments) {
        int n = segments.size();
        Point[] joint = new Point[n];
        for (int i = 0; i < n; i++) {
            Segment before = segments.get((i + n - 1) % n);
            Segment after = segments.get(i);
            joint[i] = before instanceof Arc ? before.end() : after instanceof Arc ? after.start()
                    : before.end().plus(after.start()).times(0.5);
        }
        List<Segment> out = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            boolean line = segments.get(i) instanceof Line;
            out.add(line ? new Line(joint[i], joint[(i + 1) % n]) : segments.get(i));
        }
        return out;
    }
}
