// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

import punchwright.engine.geometry.Point;

/**
 * A hit with its punch.
 *
 * @param turn  place in the order of the run, from 0
 */
record Stroke(int turn, ProofHit hit, Punch punch, int punchKey, Envelope box) {

    static Stroke of(int turn, ProofHit hit, Punch punch, int punchKey) {
        Envelope b = punch.box();
        return new Stroke(turn, hit, punch, punchKey, new Envelope(b.getMinX() + hit.xMm(), b.getMaxX() + hit.xMm(),
                b.getMinY() + hit.yMm(), b.getMaxY() + hit.yMm()));
    }

    double x() {
        return hit.xMm();
    }

    double y() {
        return hit.yMm();
    }

    Point at() {
        return new Point(hit.xMm(), hit.yMm());
    }

    boolean cuts() {
        return !punch.forms();
    }

    /** What it takes away, relative to an anchor. */
    Geometry areaAbout(double anchorX, double anchorY) {
        return AffineTransformation.translationInstance(x() - anchorX, y() - anchorY).transform(punch.area());
    }

    String name() {
        return "hit " + hit.id();
    }
}
