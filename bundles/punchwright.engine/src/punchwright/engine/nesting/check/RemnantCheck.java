// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.check;

import static punchwright.engine.nesting.check.LayoutCheck.TOLERANCE_MM;

import java.util.List;

import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.Remnant;
import punchwright.engine.nesting.SheetOffer;

/** Remnants inside their sheet, a web away from parts, apart from each other and large enough. */
final class RemnantCheck {

    private final NestingJob job;
    private final List<Finding> findings;

    RemnantCheck(NestingJob job, List<Finding> findings) {
        this.job = job;
        this.findings = findings;
    }

    void check(int layout, SheetOffer sheet, List<Remnant> remnants, List<Placed> parts) {
        for (int i = 0; i < remnants.size(); i++) {
            Remnant r = remnants.get(i);
            Envelope box = box(r);
            boolean inside = box.getMinX() > -TOLERANCE_MM && box.getMinY() > -TOLERANCE_MM
                    && box.getMaxX() < sheet.lengthMm() + TOLERANCE_MM && box.getMaxY() < sheet.widthMm() + TOLERANCE_MM;
            boolean apart = remnants.subList(0, i).stream().map(RemnantCheck::box)
                    .noneMatch(o -> o.intersection(box).getWidth() > TOLERANCE_MM
                            && o.intersection(box).getHeight() > TOLERANCE_MM);
            Geometry rectangle = Placed.FACTORY.toGeometry(box);
            double nearest = parts.stream().mapToDouble(p -> p.polygon().distance(rectangle) - p.part().webMm()).min().orElse(0);
            boolean large = job.costs().keeps(sheet, r.lengthMm(), r.widthMm());
            if (!inside || !apart || nearest < -TOLERANCE_MM || !large) {
                findings.add(Finding.at(new Point(r.xMm(), r.yMm()), LayoutReason.REMNANT, "layout " + (layout + 1), layout + 1,
                        r.lengthMm(), r.widthMm(), Math.min(0, nearest)));
            }
        }
    }

    private static Envelope box(Remnant r) {
        return new Envelope(r.xMm(), r.xMm() + r.lengthMm(), r.yMm(), r.yMm() + r.widthMm());
    }
}
