// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.feature.FeatureSet;
import punchwright.engine.finding.WayOut;
import punchwright.engine.finding.WayOut.Kind;
import punchwright.engine.geometry.Bounds;
import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Line;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;
import punchwright.engine.geometry.Segment;
import punchwright.engine.press.WebRules;

/**
 * The nearest ways out where a neighbour or the edge of the part is too near: how far to move the feature away from it, a sheet
 * so thin that the distance is enough, or two straight-edged openings that touch drawn as one. Each is measured again.
 */
final class NeighbourWayOut {

    /** Features of one part that ways out are looked for. */
    private static final int MOST_ASKED = 8;
    private static final double STEP_MM = 0.1;
    private static final double FINE_MM = 0.01;
    private static final double MOST_MM = 10;
    private static final double TOUCHING_MM = 0.02;
    private static final double STRAIGHT = 1e-6;

    private final ToolingJob job;
    private int asked;
    private List<Feature> openings = List.of();

    NeighbourWayOut(ToolingJob job) {
        this.job = job;
    }

    /** Whether one more is looked at; keeps the openings about it. */
    private boolean look(Bounds about) {
        if (!job.elsewhere().asked() || asked >= MOST_ASKED) {
            return false;
        }
        asked++;
        Bounds near = about.grown(MOST_MM + WebRules.toFormMm(job.thicknessMm()));
        openings = job.features().features().stream().filter(Feature::isOpening)
                .filter(f -> f.contour().bounds().intersects(near)).toList();
        return true;
    }

    private List<WayOut> notLooked() {
        return job.elsewhere().asked() ? List.of(WayOut.of(Kind.NOT_ASKED, MOST_ASKED)) : List.of();
    }

    /** An opening whose web to another one or to the edge is less than the least. */
    List<WayOut> ofWeb(Feature f) {
        return look(f.contour().bounds()) ? web(f) : notLooked();
    }

    private List<WayOut> web(Feature f) {
        double least = WebRules.leastWebMm(job.thicknessMm());
        Geometry area = Areas.of(f.contour());
        Geometry edge = Areas.of(job.features().shape().outer()).getExteriorRing();
        Feature near = nearest(f, area);
        double toNear = near == null ? Double.POSITIVE_INFINITY : Areas.of(near.contour()).distance(area);
        ToolingJob close = job.of(new FeatureSet(job.features().part(), job.features().shape(), openings, List.of()));
        List<WayOut> ways = new ArrayList<>();
        double now = Math.min(toNear, edge.distance(area));
        if (near != null && toNear <= edge.distance(area)) {
            apart(f, f.center().minus(near.center()), Areas.of(near.contour()), least, f2 -> WebCheck.leavesWebs(close, f, f2))
                    .ifPresent(by -> ways.add(apart(by, named(near), now, least)));
            if (toNear < TOUCHING_MM) {
                joined(f, near).ifPresent(ways::add);
            }
        } else {
            apart(f, inward(f.center()), edge, least, f2 -> WebCheck.leavesWebs(close, f, f2))
                    .ifPresent(by -> ways.add(apart(by, "", now, least)));
        }
        thinner(now, t -> WebRules.check("", now, t).isEmpty()).ifPresent(t -> ways.add(WayOut.of(Kind.THINNER, t)));
        return ways;
    }

    /** A form that stands too near to the edge of an opening; {@code area}: what it marks. */
    List<WayOut> ofForm(Point at, Geometry area, Feature opening) {
        return look(opening.contour().bounds()) ? form(at, area, opening) : notLooked();
    }

    private List<WayOut> form(Point at, Geometry area, Feature opening) {
        double least = WebRules.toFormMm(job.thicknessMm());
        Geometry hole = Areas.of(opening.contour());
        Point away = at.minus(opening.center()).unit();
        List<WayOut> ways = new ArrayList<>();
        List<Geometry> beside = openings.stream().filter(o -> o.center().distance(at) >= o.lengthMm() / 2)
                .map(o -> (Geometry) Areas.of(o.contour())).toList();
        nearestStep(by -> beside.stream().allMatch(o -> o.distance(moved(area, away, by)) >= least - STRAIGHT))
                .ifPresent(by -> ways.add(apart(by, named(opening), area.distance(hole), least)));
        thinner(area.distance(hole), t -> area.distance(hole) >= WebRules.toFormMm(t)).ifPresent(t -> ways.add(WayOut.of(
                Kind.THINNER, t)));
        return ways;
    }

    private static Geometry moved(Geometry g, Point dir, double by) {
        return AffineTransformation.translationInstance(dir.x() * by, dir.y() * by).transform(g);
    }

    private static WayOut apart(double by, String from, double now, double needed) {
        return new WayOut(Kind.APART, by, "", from, List.of(now, needed), List.of());
    }

    private static String named(Feature f) {
        return FeatureNames.what(f) + " (" + f.number() + ")";
    }

    private Feature nearest(Feature f, Geometry area) {
        Feature near = null;
        double least = Double.POSITIVE_INFINITY;
        for (Feature o : openings) {
            double d = o.number() == f.number() ? Double.POSITIVE_INFINITY : Areas.of(o.contour()).distance(area);
            if (d < least) {
                least = d;
                near = o;
            }
        }
        return near;
    }

    /** At right angles to the nearest piece of the outer contour, into the material. */
    private Point inward(Point p) {
        Segment nearest = job.features().shape().outer().segments().stream()
                .min((a, b) -> Double.compare(a.distance(p), b.distance(p))).orElseThrow();
        return nearest.tangentAt(nearest.shareNearest(p)).left();
    }

    private OptionalDouble apart(Feature f, Point dir, Geometry from, double least, Predicate<Feature> fits) {
        if (dir.norm() < STRAIGHT) {
            return OptionalDouble.empty();
        }
        Point unit = dir.unit();
        return nearestStep(by -> {
            Feature there = shifted(f, unit.times(by));
            return Areas.of(there.contour()).distance(from) >= least - STRAIGHT && fits.test(there);
        });
    }

    /** The least distance in steps of 0.1, then 0.01 mm. */
    private static OptionalDouble nearestStep(DoublePredicate fits) {
        for (int i = 1; i * STEP_MM <= MOST_MM; i++) {
            if (fits.test(i * STEP_MM)) {
                int best = 10 * i;
                while (best > 10 * (i - 1) + 1 && fits.test((best - 1) * FINE_MM)) {
                    best--;
                }
                return OptionalDouble.of(best / 100.0);
            }
        }
        return OptionalDouble.empty();
    }

    private static Feature shifted(Feature f, Point by) {
        Contour c = f.contour().moved(Pose.at(by.x(), by.y(), 0));
        return new Feature(f.number(), f.kind(), f.center().plus(by), f.angleDeg(), f.lengthMm(), f.widthMm(), f.cornerRadiusMm(),
                c, c.segments(), f.form(), f.direction());
    }

    private OptionalDouble thinner(double nowMm, DoublePredicate enough) {
        for (double t = Math.floor(100 * job.thicknessMm()) - 1; t >= 100 * job.machine().minThicknessMm() && nowMm > 0; t--) {
            if (enough.test(t / 100)) {
                return OptionalDouble.of(t / 100);
            }
        }
        return OptionalDouble.empty();
    }

    /** Both as one opening, where the tools owned make that. */
    private Optional<WayOut> joined(Feature a, Feature b) {
        Geometry union = Areas.union(List.of(Areas.of(a.contour()), Areas.of(b.contour())));
        if (!straight(a) || !straight(b) || !(union instanceof Polygon p) || p.getNumInteriorRing() > 0) {
            return Optional.empty();
        }
        Contour c = contour(p).oriented(false);
        Feature both = new Feature(a.number(), FeatureKind.FREE_OPENING, c.bounds().center(), a.angleDeg(), c.bounds().width(),
                c.bounds().height(), 0, c, c.segments(), "");
        boolean made = new AskAgain(job, Set.of()).made(new Trial(job, null), both, Reshape.alone(job.features().part(), both));
        return made ? Optional.of(new WayOut(Kind.JOINED, 0, "", named(b))) : Optional.empty();
    }

    private static boolean straight(Feature f) {
        return f.path().stream().allMatch(Line.class::isInstance);
    }

    private static Contour contour(Polygon p) {
        Coordinate[] c = p.getExteriorRing().getCoordinates();
        List<Point> ring = Arrays.stream(c, 0, c.length - 1).map(o -> new Point(o.x, o.y)).toList();
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Point in = ring.get(i).minus(ring.get((i + ring.size() - 1) % ring.size())).unit();
            Point out = ring.get((i + 1) % ring.size()).minus(ring.get(i)).unit();
            if (Math.abs(in.cross(out)) > STRAIGHT) {
                corners.add(ring.get(i));
            }
        }
        return Contour.polygon(corners);
    }
}
