// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The same contour in as few segments as there are edges: pieces of one line or one circle joined, pieces shorter than the
 * tolerance dropped, a full circle as one arc from angle 0, lines drawn to meet their neighbours. Nothing moves by more
 * than the tolerance.
 */
public final class ContourTidy {

    private final double toleranceMm;

    private ContourTidy(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    /** @param toleranceMm greatest shift of any point of the contour, above 0 */
    public static Contour tidy(Contour contour, double toleranceMm) {
        double diameter = contour.circleDiameterMm(toleranceMm);
        if (diameter > 0) {
            return circle(contour, diameter);
        }
        return new ContourTidy(toleranceMm).run(contour);
    }

    private static Contour circle(Contour contour, double diameter) {
        Contour circle = Contour.circle(((Arc) contour.segments().get(0)).center(), diameter);
        return contour.isCounterClockwise() ? circle : circle.reversed();
    }

    private Contour run(Contour contour) {
        List<Segment> kept = contour.segments().stream().filter(s -> s.lengthMm() > toleranceMm).toList();
        if (kept.size() < 2) {
            return contour;
        }
        List<Segment> joined = joined(fromBreak(kept));
        double diameter = new Contour(joined).circleDiameterMm(toleranceMm);
        return diameter > 0 ? circle(new Contour(joined), diameter) : new Contour(meeting(joined));
    }

    /** Turned round so that the first segment does not continue the last. */
    private List<Segment> fromBreak(List<Segment> segments) {
        int n = segments.size();
        for (int i = 0; i < n; i++) {
            if (joinOf(List.of(segments.get((i + n - 1) % n)), segments.get(i)) == null) {
                List<Segment> turned = new ArrayList<>(segments.subList(i, n));
                turned.addAll(segments.subList(0, i));
                return turned;
            }
        }
        return segments;
    }

    private List<Segment> joined(List<Segment> segments) {
        List<Segment> out = new ArrayList<>();
        List<Segment> run = new ArrayList<>();
        Segment current = null;
        for (Segment s : segments) {
            Segment longer = current == null ? null : joinOf(run, s);
            if (longer == null) {
                if (current != null) {
                    out.add(current);
                }
                run.clear();
                current = s;
            } else {
                current = longer;
            }
            run.add(s);
        }
        out.add(current);
        return out;
    }

    /** One segment for the run and the next one; null when they are not of one line or circle. */
    private Segment joinOf(List<Segment> run, Segment next) {
        Segment first = run.get(0);
        if (first instanceof Line && next instanceof Line) {
            return joinedLine(run, next);
        }
        if (first instanceof Arc a && next instanceof Arc b && Math.signum(a.sweepRad()) == Math.signum(b.sweepRad())
                && a.center().distance(b.center()) <= toleranceMm && Math.abs(a.radiusMm() - b.radiusMm()) <= toleranceMm) {
            return joinedArc(run, b);
        }
        return null;
    }

    private Line joinedLine(List<Segment> run, Segment next) {
        Line chord = new Line(run.get(0).start(), next.end());
        Point direction = chord.tangentAt(0);
        if (direction.dot(next.tangentAt(0)) < 0 || direction.dot(run.get(run.size() - 1).tangentAt(0)) < 0) {
            return null;
        }
        for (Segment s : run) {
            if (chord.distance(s.start()) > toleranceMm || chord.distance(s.end()) > toleranceMm) {
                return null;
            }
        }
        return chord.distance(next.start()) <= toleranceMm ? chord : null;
    }

    private static Arc joinedArc(List<Segment> run, Arc next) {
        double sweep = next.sweepRad();
        double weight = Math.abs(next.sweepRad());
        Point center = next.center().times(weight);
        double radius = next.radiusMm() * weight;
        for (Segment s : run) {
            Arc arc = (Arc) s;
            double w = Math.abs(arc.sweepRad());
            sweep += arc.sweepRad();
            weight += w;
            center = center.plus(arc.center().times(w));
            radius += arc.radiusMm() * w;
        }
        if (Math.abs(sweep) >= 2 * Math.PI - 1e-6) {
            return null;
        }
        center = center.times(1 / weight);
        return new Arc(center, radius / weight, run.get(0).start().minus(center).angleRad(), sweep);
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
