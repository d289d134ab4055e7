// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.List;

import punchwright.engine.geometry.Arc;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Ends, a point about the middle, and length of a piece, rounded to the tolerance. Two entities with one key are the same but
 * for the last digits; two whose distance is below the tolerance may still round to different keys. This is how an independent
 * reader tells entities drawn twice, and only the figures as drawn go by it; repairs go by distance.
 */
record PieceKey(long x1, long y1, long x2, long y2, long x, long y, long length) {

    /** Sagitta of the chords that the middle is counted in, in mm. */
    private static final double SAGITTA_MM = 0.01;

    static PieceKey of(Piece piece, double toleranceMm) {
        Point a = piece.start();
        Point b = piece.end();
        boolean turned = a.x() > b.x() || a.x() == b.x() && a.y() > b.y();
        Point m = middle(piece);
        double t = toleranceMm;
        return new PieceKey(round((turned ? b : a).x(), t), round((turned ? b : a).y(), t), round((turned ? a : b).x(), t),
                round((turned ? a : b).y(), t), round(m.x(), t), round(m.y(), t), round(piece.lengthMm(), t));
    }

    private static long round(double v, double toleranceMm) {
        return (long) Math.rint(v / toleranceMm);
    }

    /** The corner in the middle of the chords; half way along a single line or an approximated curve. */
    private static Point middle(Piece piece) {
        List<Segment> segments = piece.segments();
        int total = segments.stream().mapToInt(PieceKey::chords).sum();
        if (!piece.exact() || total == 1) {
            return piece.middle();
        }
        int left = (total + 1) / 2;
        for (Segment s : segments) {
            int chords = chords(s);
            if (left <= chords) {
                return s.pointAt((double) left / chords);
            }
            left -= chords;
        }
        return piece.end();
    }

    private static int chords(Segment s) {
        if (!(s instanceof Arc arc)) {
            return 1;
        }
        double share = SAGITTA_MM / arc.radiusMm();
        double step = share < 1 ? 2 * Math.acos(1 - share) : Math.PI / 2;
        int n = (int) Math.max(1, Math.min(1e6, Math.ceil(Math.abs(arc.sweepRad()) / step - 1e-9)));
        return Math.abs(arc.sweepRad()) > Math.PI ? Math.max(n, 4) : n;
    }
}
