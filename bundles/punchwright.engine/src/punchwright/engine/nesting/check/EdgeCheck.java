// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.check;

import static punchwright.engine.nesting.check.LayoutCheck.TOLERANCE_MM;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.engine.nesting.ClampZone;
import punchwright.engine.nesting.Margins;
import punchwright.engine.nesting.SheetOffer;

/** One part against the edges of its sheet and the clamp strip. */
final class EdgeCheck {

    private final Margins margins;
    private final SheetOffer sheet;
    private final String where;
    private final List<Finding> findings;

    EdgeCheck(Margins margins, SheetOffer sheet, String where, List<Finding> findings) {
        this.margins = margins;
        this.sheet = sheet;
        this.where = where;
        this.findings = findings;
    }

    void check(Placed p) {
        Envelope b = p.box();
        double over = Math.max(Math.max(-b.getMinX(), -b.getMinY()),
                Math.max(b.getMaxX() - sheet.lengthMm(), b.getMaxY() - sheet.widthMm()));
        if (over > TOLERANCE_MM) {
            report(LayoutReason.OUTSIDE_SHEET, p, over, sheet.lengthMm(), sheet.widthMm());
            return;
        }
        double below = sheet.bar() ? 0 : margins.edgeMm();
        double above = sheet.bar() ? 0 : margins.edgeMm();
        side(p, b.getMinX(), margins.edgeMm(), 0, true);
        side(p, sheet.lengthMm() - b.getMaxX(), margins.edgeMm(), sheet.lengthMm(), true);
        side(p, b.getMinY(), below, 0, false);
        side(p, sheet.widthMm() - b.getMaxY(), above, sheet.widthMm(), false);
        if (!sheet.bar() && b.getMinY() < margins.clampStripMm() - TOLERANCE_MM) {
            clampStrip(p);
        }
    }

    /** A side nearer than the margin is right only where it is the sheet's own edge all along. */
    private void side(Placed p, double distanceMm, double marginMm, double at, boolean alongY) {
        boolean own = margins.clampZone() == ClampZone.NO_HIT && !sheet.bar() && isSheetEdge(p, at, alongY);
        if (distanceMm < marginMm - TOLERANCE_MM && !own) {
            report(LayoutReason.EDGE, p, distanceMm, marginMm);
        }
    }

    private static boolean isSheetEdge(Placed p, double at, boolean alongY) {
        Envelope b = p.box();
        double onEdge = 0;
        Coordinate[] c = p.polygon().getGeometryN(0).getCoordinates();
        for (int i = 1; i < c.length; i++) {
            double da = Math.abs((alongY ? c[i - 1].x : c[i - 1].y) - at);
            double db = Math.abs((alongY ? c[i].x : c[i].y) - at);
            onEdge += da <= TOLERANCE_MM && db <= TOLERANCE_MM ? c[i - 1].distance(c[i]) : 0;
        }
        return onEdge >= (alongY ? b.getHeight() : b.getWidth()) - 10 * TOLERANCE_MM;
    }

    private void clampStrip(Placed p) {
        if (margins.clampZone() == ClampZone.NO_PART) {
            report(LayoutReason.CLAMP_ZONE, p, p.box().getMinY(), margins.clampStripMm(), 0.0);
            return;
        }
        Geometry inner = Placed.FACTORY.toGeometry(new Envelope(TOLERANCE_MM, sheet.lengthMm() - TOLERANCE_MM, TOLERANCE_MM,
                sheet.widthMm() - TOLERANCE_MM));
        Geometry cut = p.polygon().getBoundary().intersection(inner);
        double lowest = cut.isEmpty() ? Double.POSITIVE_INFINITY : cut.getEnvelopeInternal().getMinY();
        if (lowest < margins.clampStripMm() + margins.hitReachMm() - 2 * TOLERANCE_MM) {
            report(LayoutReason.CLAMP_ZONE, p, lowest, margins.clampStripMm(), margins.hitReachMm());
        }
    }

    private void report(LayoutReason reason, Placed p, Object... values) {
        Object[] arguments = new Object[values.length + 1];
        arguments[0] = p.id();
        System.arraycopy(values, 0, arguments, 1, values.length);
        findings.add(Finding.at(new Point(p.box().getMinX(), p.box().getMinY()), reason, where + ", part " + p.id(), arguments));
    }
}
