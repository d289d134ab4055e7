// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

import org.locationtech.jts.geom.Geometry;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;
import punchwright.engine.finding.WayOut;
import punchwright.engine.press.CopperBar;
import punchwright.engine.press.Countersink;
import punchwright.engine.press.FormingRules;
import punchwright.engine.press.PressReason;
import punchwright.engine.press.PunchingForce;
import punchwright.engine.press.SlugPulling;
import punchwright.engine.press.ThreadCollar;

/**
 * What the rules of the press say about the operations of a part: range of the force formula, slugs that may come up, forms
 * too near to openings or too high, holes under collars and countersinks, copper bar. Webs and edge distances are
 * {@link WebCheck}'s; clearances and smallest features {@link ToolLimits}'.
 */
final class TradeRules {

    /** Hole under a collar against the one needed. Common practice. */
    private static final double HOLE_TOLERANCE = 0.1;
    private static final double CONE_DEG = 90;

    private final ToolingJob job;
    private final double thicknessMm;
    private final NeighbourWayOut neighbours;
    private final List<Finding> findings = new ArrayList<>();

    TradeRules(ToolingJob job) {
        this.job = job;
        thicknessMm = job.thicknessMm();
        neighbours = new NeighbourWayOut(job);
    }

    List<Finding> findings(List<Operation> operations) {
        findings.addAll(PunchingForce.check("part " + job.features().part(), thicknessMm));
        slugs(operations);
        List<Operation> forms = operations.stream().filter(o -> o.tool().shape().forms()).toList();
        forms.forEach(this::form);
        if (CopperBar.applies(job.material().group(), thicknessMm)) {
            openings().forEach(f -> findings.addAll(CopperBar.check(subject(f), thicknessMm, f.widthMm(), 0, 0)));
        }
        return findings;
    }

    private List<Feature> openings() {
        return job.features().features().stream().filter(Feature::isOpening).toList();
    }

    private String subject(Feature f) {
        return FeatureNames.subject(job.features().part(), f);
    }

    /** Each cutting tool once. */
    private void slugs(List<Operation> operations) {
        Map<String, Operation> cutting = new LinkedHashMap<>();
        operations.stream().filter(o -> !o.tool().shape().forms()).forEach(o -> cutting.putIfAbsent(o.tool().id(), o));
        cutting.values().forEach(o -> findings.addAll(SlugPulling.check(o.tool().name(),
                SlugPulling.causes(job.material().group(),
                thicknessMm, Math.min(o.tool().lengthMm(), o.tool().widthMm()), o.clearanceMm(), o.clearanceNeedMm(),
                        job.machine().options().oilWithoutSuction()))));
    }

    private void form(Operation o) {
        Feature under = null;
        double nearest = Double.POSITIVE_INFINITY;
        Supplier<List<WayOut>> ways = List::of;
        for (PartHit hit : o.hits()) {
            Geometry area = Areas.of(ToolFootprint.at(o.tool(), hit).getFirst());
            for (Feature f : openings()) {
                double distance = area.distance(Areas.of(f.contour()));
                if (f.center().distance(hit.at()) < f.lengthMm() / 2) {
                    under = f;
                } else if (distance < nearest) {
                    nearest = distance;
                    ways = () -> neighbours.ofForm(hit.at(), area, f);
                }
            }
        }
        for (Finding near : FormingRules.checkNeighbour(subject(o.feature()), nearest, thicknessMm)) {
            findings.add(near.with(ways.get()));
        }
        switch (o.tool().shape()) {
            case LOUVRE -> louvre(o);
            case COLLAR -> collar(o, under);
            case COUNTERSINK -> countersink(o, under);
            default -> {
                // embosses, lances and marks have no rule on height
            }
        }
    }

    /** As high as its hits make it; more than one hit is noted. */
    private void louvre(Operation o) {
        double once = FormingRules.highestLouvreMm(thicknessMm);
        double high = Math.abs(o.tool().formHeightMm());
        if (o.hits().size() > 1 && high <= o.hits().size() * once + 1e-6) {
            findings.add(Finding.of(PressReason.FORM_HITS, subject(o.feature()), high, once, o.hits().size()));
        } else {
            findings.addAll(FormingRules.checkHeight(subject(o.feature()), high, once));
        }
    }

    /** Stretch, height and hole of a collar; a record without a height says nothing of it. */
    private void collar(Operation o, Feature under) {
        if (o.tool().formHeightMm() == 0) {
            return;
        }
        double height = Math.abs(o.tool().formHeightMm()) + thicknessMm;
        double mean = o.tool().lengthMm() - thicknessMm;
        double given = o.tool().room().dieRadiusMm();
        double core = ThreadCollar.coreMm(mean, height, given > 0 ? given : ThreadCollar.USUAL_DIE_RADIUS_MM, thicknessMm);
        if (under == null && core > 0) {
            findings.add(Finding.of(PressReason.COLLAR_SOLID, subject(o.feature()), core, o.tool().lengthMm()));
        }
        double hole = under == null ? core : under.lengthMm();
        findings.addAll(ThreadCollar.check(subject(o.feature()), job.material().group(), mean, hole, height, thicknessMm));
        if (under != null && core > 0 && Math.abs(hole - core) > HOLE_TOLERANCE * core) {
            findings.add(Finding.of(PressReason.COLLAR_HOLE, subject(o.feature()), hole, core, o.tool().lengthMm()));
        }
    }

    private void countersink(Operation o, Feature under) {
        if (under != null && under.lengthMm() < o.tool().lengthMm()) {
            findings.addAll(Countersink.check(subject(o.feature()),
                    Countersink.depthMm(o.tool().lengthMm(), under.lengthMm(), CONE_DEG), thicknessMm));
        }
    }
}
