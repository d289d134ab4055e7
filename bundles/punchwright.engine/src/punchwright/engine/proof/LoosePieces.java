// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

import punchwright.engine.proof.RingResult.Loose;

/** Areas less areas, and the sizes of what is left. */
final class LoosePieces {

    /** Smaller pieces than this, or narrower, are only the arithmetic's. */
    private static final double DUST_MM2 = 0.05;
    private static final double DUST_MM = 0.03;

    private LoosePieces() {
    }

    static Geometry difference(Geometry whole, List<Geometry> cut) {
        return OverlayNGRobust.overlay(whole, OverlayNGRobust.union(cut), OverlayNG.DIFFERENCE);
    }

    /** The pieces of an area, dust left out. */
    static List<Loose> in(Geometry area) {
        List<Loose> pieces = new ArrayList<>();
        for (int i = 0; i < area.getNumGeometries(); i++) {
            Loose piece = of(area.getGeometryN(i));
            if (piece != null) {
                pieces.add(piece);
            }
        }
        return pieces;
    }

    /** One piece; null for dust. */
    static Loose of(Geometry piece) {
        if (piece.getArea() < DUST_MM2) {
            return null;
        }
        Coordinate[] r = MinimumDiameter.getMinimumRectangle(piece).getCoordinates();
        double a = r[0].distance(r[1]);
        double b = r.length > 3 ? r[1].distance(r[2]) : 0;
        return Math.min(a, b) < DUST_MM ? null
                : new Loose(piece.getInteriorPoint().getCoordinate(), Math.max(a, b), Math.min(a, b));
    }
}
