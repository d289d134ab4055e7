// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.check;

import static punchwright.engine.nesting.check.LayoutCheck.TOLERANCE_MM;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.distance.DistanceOp;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.engine.nesting.SheetOffer;
import punchwright.engine.nesting.UsableOpening;

/** Parts of one sheet against each other: overlap, webs, one row on a bar. */
final class PairCheck {

    private final SheetOffer sheet;
    private final String where;
    private final List<Finding> findings;

    PairCheck(SheetOffer sheet, String where, List<Finding> findings) {
        this.sheet = sheet;
        this.where = where;
        this.findings = findings;
    }

    @SuppressWarnings("unchecked")
    void check(List<Placed> placed) {
        double web = placed.stream().mapToDouble(p -> p.part().webMm()).max().orElse(0);
        STRtree tree = new STRtree();
        for (int i = 0; i < placed.size(); i++) {
            tree.insert(placed.get(i).box(), i);
        }
        for (int i = 0; i < placed.size(); i++) {
            Envelope near = new Envelope(placed.get(i).box());
            near.expandBy(web, sheet.bar() ? sheet.widthMm() : web);
            for (int j : (List<Integer>) tree.query(near)) {
                if (j > i) {
                    pair(placed.get(i), placed.get(j));
                }
            }
        }
    }

    private void pair(Placed a, Placed b) {
        double web = Math.max(a.part().webMm(), b.part().webMm());
        DistanceOp op = new DistanceOp(a.polygon(), b.polygon());
        double distance = op.distance();
        Coordinate near = op.nearestPoints()[0];
        Point at = new Point(near.x, near.y);
        if (distance <= TOLERANCE_MM && a.polygon().buffer(-TOLERANCE_MM).intersects(b.polygon().buffer(-TOLERANCE_MM))) {
            findings.add(Finding.at(at, LayoutReason.OVERLAP, where + ", parts " + a.id() + " and " + b.id(), a.id(), b.id()));
        } else if (distance < web - TOLERANCE_MM) {
            findings.add(Finding.at(at, LayoutReason.WEB, where + ", parts " + a.id() + " and " + b.id(), a.id(), b.id(),
                    distance, web));
        } else if (inOpening(a, b, at) || inOpening(b, a, at)) {
            return;
        } else if (sheet.bar() && Math.min(a.box().getMaxX(), b.box().getMaxX())
                - Math.max(a.box().getMinX(), b.box().getMinX()) > TOLERANCE_MM) {
            findings.add(Finding.at(at, LayoutReason.BAR, where + ", parts " + a.id() + " and " + b.id(), a.id(), b.id()));
        }
    }

    /** Whether a part lies in an opening of another that is not usable, or too near to its edge; then there is a finding. */
    private boolean inOpening(Placed large, Placed small, Point at) {
        Polygon p = (Polygon) large.polygon();
        for (int hole = 0; hole < p.getNumInteriorRing(); hole++) {
            if (Placed.FACTORY.createPolygon(p.getInteriorRingN(hole)).contains(small.polygon())) {
                int number = hole;
                double least = large.part().openings().stream().filter(o -> o.hole() == number)
                        .mapToDouble(UsableOpening::clearMm).findFirst().orElse(Double.POSITIVE_INFINITY);
                double distance = p.getInteriorRingN(hole).distance(small.polygon());
                if (distance < least - TOLERANCE_MM) {
                    findings.add(Finding.at(at, LayoutReason.OPENING, where + ", parts " + large.id() + " and " + small.id(),
                            small.id(), large.id(), hole + 1, distance, Double.isInfinite(least) ? -1.0 : least));
                    return true;
                }
            }
        }
        return false;
    }
}
