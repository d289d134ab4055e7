// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/** Says which of several areas a point lies in. */
final class PieceFinder {

    private final List<Geometry> pieces;
    private final List<IndexedPointInAreaLocator> locators = new ArrayList<>();

    PieceFinder(List<Geometry> pieces) {
        this.pieces = pieces;
        pieces.forEach(p -> locators.add(new IndexedPointInAreaLocator(p)));
    }

    /** Index of the area, or -1. */
    int at(double x, double y) {
        Coordinate c = new Coordinate(x, y);
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i).getEnvelopeInternal().contains(c) && locators.get(i).locate(c) != Location.EXTERIOR) {
                return i;
            }
        }
        return -1;
    }
}
