// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.nesting.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Geometry;

import punchwright.engine.finding.Finding;
import punchwright.engine.nesting.Layout;
import punchwright.engine.nesting.NestPart;
import punchwright.engine.nesting.Nesting;
import punchwright.engine.nesting.NestingJob;
import punchwright.engine.nesting.Placement;

/** Judges layouts by the rules of their job: places, webs, angles, counts, stock, machine, remnants. */
public final class LayoutCheck {

    /** Lengths are checked to this, mm. */
    static final double TOLERANCE_MM = 1e-3;

    private final NestingJob job;
    private final Map<String, NestPart> parts = new LinkedHashMap<>();
    private final Map<String, Geometry> shapes = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private LayoutCheck(NestingJob job) {
        this.job = job;
        for (NestPart part : job.parts()) {
            parts.put(part.id(), part);
            shapes.put(part.id(), Placed.polygon(part.shape()));
        }
    }

    /** What is wrong on one sheet; counts and stock are left aside. */
    public static List<Finding> of(NestingJob job, Layout layout) {
        LayoutCheck check = new LayoutCheck(job);
        check.layout(layout, "layout");
        return List.copyOf(check.findings);
    }

    /** What is wrong in a whole nesting. Pieces may be missing only as its own findings say. */
    public static List<Finding> of(NestingJob job, Nesting nesting) {
        LayoutCheck check = new LayoutCheck(job);
        new CountCheck(job, nesting, check.findings).check();
        for (int i = 0; i < nesting.layouts().size(); i++) {
            check.layout(nesting.layouts().get(i), "layout " + (i + 1));
        }
        check.remnants(nesting);
        return List.copyOf(check.findings);
    }

    private void layout(Layout layout, String where) {
        List<Placed> placed = placed(layout, where);
        EdgeCheck edges = new EdgeCheck(job.margins(), layout.sheet(), where, findings);
        placed.forEach(edges::check);
        new PairCheck(layout.sheet(), where, findings).check(placed);
    }

    private List<Placed> placed(Layout layout, String where) {
        List<Placed> placed = new ArrayList<>();
        for (Placement p : layout.placements()) {
            NestPart part = parts.get(p.partId());
            if (part == null) {
                findings.add(Finding.of(LayoutReason.UNKNOWN_PART, where, p.partId()));
                continue;
            }
            Placed at = Placed.of(part, shapes.get(part.id()), p.pose());
            if (p.pose().mirrored() || part.anglesDeg().stream()
                    .noneMatch(a -> Math.abs(Math.IEEEremainder(a - p.pose().angleDeg(), 360)) < 1e-9)) {
                findings.add(Finding.at(at.middle(), LayoutReason.ANGLE, where + ", part " + part.id(), part.id(),
                        p.pose().angleDeg(), p.pose().mirrored() ? 1 : 0, part.anglesDeg().toString()));
            }
            placed.add(at);
        }
        return placed;
    }

    private void remnants(Nesting nesting) {
        RemnantCheck remnants = new RemnantCheck(job, findings);
        for (int i = 0; i < nesting.layouts().size(); i++) {
            int index = i;
            remnants.check(i, nesting.layouts().get(i).sheet(),
                    nesting.remnants().stream().filter(r -> r.layout() == index).toList(),
                    placed(nesting.layouts().get(i), "layout " + (i + 1)));
        }
    }
}
