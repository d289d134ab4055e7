// SPDX-License-Identifier: EPL-2.0
package punchwright.benchmarks.layout;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import punchwright.engine.nesting.shapes.StripSearch;

/** Judges a packed strip with other code than the search: every piece once, at an allowed angle, inside, none on another. */
record StripCheck(double width, StripSearch.Strip strip, List<StripInstance.Kind> kindOf) {

    /** Empty, or what is wrong. Three hairs are allowed: at sides, and along the outline of a piece. */
    String fault() {
        double hair = 3 * StripInstance.HAIR_SHARE * width;
        boolean[] seen = new boolean[kindOf.size()];
        List<Geometry> placed = new ArrayList<>();
        for (StripSearch.Placed p : strip.placed()) {
            if (p.piece() < 0 || p.piece() >= seen.length || seen[p.piece()]) {
                return "piece " + p.piece() + " twice or unknown";
            }
            seen[p.piece()] = true;
            if (kindOf.get(p.piece()).anglesDeg().stream().noneMatch(a -> a == p.angleDeg())) {
                return "piece " + p.piece() + " at " + p.angleDeg() + " degrees, which is not allowed";
            }
            Geometry g = moved(kindOf.get(p.piece()), p);
            Envelope box = g.getEnvelopeInternal();
            if (!(box.getMinX() >= -hair && box.getMinY() >= -hair && box.getMaxX() <= strip.length() + hair
                    && box.getMaxY() <= width + hair)) {
                return "piece " + p.piece() + " outside";
            }
            for (int i = 0; i < placed.size(); i++) {
                Geometry o = placed.get(i);
                if (o.getEnvelopeInternal().intersects(box)
                        && o.intersection(g).getArea() > hair * Math.min(o.getLength(), g.getLength())) {
                    return "pieces " + strip.placed().get(i).piece() + " and " + p.piece() + " overlap";
                }
            }
            placed.add(g);
        }
        return placed.size() == kindOf.size() ? "" : "pieces placed " + placed.size() + ", asked for " + kindOf.size();
    }

    private static Geometry moved(StripInstance.Kind kind, StripSearch.Placed p) {
        AffineTransformation t = AffineTransformation.rotationInstance(Math.toRadians(p.angleDeg()));
        t.translate(p.x(), p.y());
        Geometry g = t.transform(StripInstance.polygon(kind.rings()));
        return g.isValid() ? g : GeometryFixer.fix(g);
    }
}
