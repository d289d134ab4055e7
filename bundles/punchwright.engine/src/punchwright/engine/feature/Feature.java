// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.feature;

import java.util.List;

import punchwright.engine.geometry.Contour;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * A hole, slot, cut-out, edge or form recognised on a part, in the part's own coordinates (mm).
 *
 * @param number         from 1, unique in the part
 * @param kind           what it is
 * @param center         centre of the opening, or middle of the edge
 * @param angleDeg       direction of the length, 0 to below 360
 * @param lengthMm       diameter of a round, longer side, overall length of an obround, across flats of a hexagon, side
 *                       of a triangle, length of an edge
 * @param widthMm        shorter side, width of an obround or slot, the distance over the flat or flats; equals the length
 *                       where there is only one size; 0 for an edge
 * @param cornerRadiusMm radius of the corners or of an arc edge; 0 where sharp
 * @param contour        the closed contour of an opening; null for an edge or form
 * @param path           the segments in order with the part's material on the left: of the whole opening (clockwise), or
 *                       of the edge; of a form its outline as drawn
 * @param form           name of the form's tool shape for FORM, empty where a drawing marks one without a name; empty otherwise
 * @param direction      side to which a form goes where it is known
 */
public record Feature(int number, FeatureKind kind, Point center, double angleDeg, double lengthMm, double widthMm,
        double cornerRadiusMm, Contour contour, List<Segment> path, String form, FormDirection direction) {

    public Feature {
        path = List.copyOf(path);
    }

    /** Without a direction. */
    public Feature(int number, FeatureKind kind, Point center, double angleDeg, double lengthMm, double widthMm,
            double cornerRadiusMm, Contour contour, List<Segment> path, String form) {
        this(number, kind, center, angleDeg, lengthMm, widthMm, cornerRadiusMm, contour, path, form, FormDirection.NONE);
    }

    public boolean isOpening() {
        return contour != null;
    }
}
