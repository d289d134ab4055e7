// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Pose;

/** What an outline cut leaves loose inside an opening: the opening less all that is punched. */
final class SlugCheck {

    private static final double DUST_MM2 = 0.05;
    private static final double DUST_MM = 0.03;

    private final Geometry opening;
    private final double angleDeg;

    /** The sides of slugs are measured along {@code angleDeg}; a rim of the scallop's height is left out, since
     * cusps stay on the part. */
    SlugCheck(Contour opening, double angleDeg, double scallopMm) {
        double cuspMm = scallopMm + DUST_MM;
        this.opening = Areas.of(opening).buffer(-cuspMm);
        this.angleDeg = angleDeg;
    }

    /** Loose area after the hits. */
    Geometry loose(List<Piece> pieces) {
        List<Geometry> cut = new ArrayList<>();
        pieces.forEach(p -> p.hits().forEach(h -> cut.add(p.tool().footprint().coarseArea(h))));
        return cut.isEmpty() ? opening : Areas.difference(opening, Areas.union(cut));
    }

    /** Larger side of the largest loose piece, mm; 0 when nothing worth the name is left. */
    double largestSideMm(Geometry loose) {
        double largest = 0;
        for (int i = 0; i < loose.getNumGeometries(); i++) {
            Geometry slug = loose.getGeometryN(i);
            if (slug.getArea() > DUST_MM2) {
                largest = Math.max(largest, side(slug));
            }
        }
        return largest;
    }

    /** The loose pieces that fit between two parallels nearer than {@code leastMm}: they jam between punch and die. */
    Geometry slivers(Geometry loose, double leastMm) {
        List<Geometry> thin = new ArrayList<>();
        for (int i = 0; i < loose.getNumGeometries(); i++) {
            Geometry slug = loose.getGeometryN(i);
            if (slug.getArea() > DUST_MM2 && thin(slug, leastMm)) {
                thin.add(slug);
            }
        }
        return Areas.union(thin);
    }

    private static boolean thin(Geometry slug, double leastMm) {
        double width = new MinimumDiameter(slug).getLength();
        return width > DUST_MM && width < leastMm - 1e-6;
    }

    private double side(Geometry slug) {
        Pose back = Pose.at(0, 0, -angleDeg);
        Envelope box = new Envelope();
        for (Coordinate c : slug.getCoordinates()) {
            Point p = back.apply(new Point(c.x, c.y));
            box.expandToInclude(p.x(), p.y());
        }
        return Math.max(box.getWidth(), box.getHeight());
    }
}
