// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.locationtech.jts.geom.Geometry;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.finding.Finding;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * All ways worth weighing to make each feature of one part: exact hits, outlines cut segment by segment with the slug falling,
 * nibbled away or held by joints, forms. Cheapest first.
 */
final class Candidates {

    private static final int SLUG_JOINTS = 2;

    private final ToolingJob job;
    private final ChoiceWeights weights;
    private final List<UsableTool> tools;
    private final PartGuard guard;
    private final HitTime time;
    private final OutlineCutter outlines;
    private final ExactHit exact;
    private final Map<Integer, List<Double>> joints;

    Candidates(ToolingJob job, List<UsableTool> tools, ChoiceWeights weights) {
        this.job = job;
        this.weights = weights;
        this.tools = tools;
        guard = new PartGuard(job.features().shape());
        time = new HitTime(job.machine(), weights);
        outlines = new OutlineCutter(job.rules(), tools, guard, time);
        exact = new ExactHit(job.rules());
        joints = new TreeMap<>(JointPlan.outer(job.features().features(), job.rules()));
    }

    PartGuard guard() {
        return guard;
    }

    List<Candidate> of(Feature feature) {
        List<Candidate> all = new ArrayList<>();
        if (feature.kind() == FeatureKind.FORM) {
            addForms(feature, all);
        } else {
            addExact(feature, all);
            addOutlines(feature, all);
        }
        all.sort(Comparator.comparingDouble((Candidate c) -> c.cost(weights)).thenComparing(c -> c.setups().toString()));
        return all;
    }

    private void addForms(Feature feature, List<Candidate> all) {
        for (UsableTool t : tools) {
            boolean fits = t.tool().shape().forms() && t.tool().shape().name().equalsIgnoreCase(feature.form())
                    && Math.abs(t.tool().lengthMm() - feature.lengthMm()) <= job.rules().sizeToleranceMm() + 1e-9
                    && Math.abs(t.tool().widthMm() - feature.widthMm()) <= job.rules().sizeToleranceMm() + 1e-9;
            if (fits) {
                AngleFit.angleDeg(t.tool(), t.turning(), feature.angleDeg()).ifPresent(a -> all.add(candidate(feature,
                        List.of(Pieces.of(feature, t, List.of(new PartHit(feature.center(), a, HitRole.FORM)))), List.of(),
                        "forming tool of this kind and size", List.of())));
            }
        }
    }

    private void addExact(Feature feature, List<Candidate> all) {
        for (UsableTool t : tools) {
            Optional<PartHit> hit = exact.find(feature, t.tool(), t.turning());
            hit.ifPresent(h -> all.add(candidate(feature, List.of(Pieces.of(feature, t, List.of(h))), List.of(),
                    "one hit makes it", List.of())));
        }
    }

    private void addOutlines(Feature feature, List<Candidate> all) {
        EdgePath path = EdgePath.of(feature, job.features().shape());
        List<List<Double>> planned = new ArrayList<>();
        path.segments().forEach(s -> planned.add(List.of()));
        if (joints.containsKey(feature.number())) {
            planned.set(0, joints.get(feature.number()));
        }
        for (List<Piece> pieces : outlines.cuts(feature, path, planned)) {
            if (feature.isOpening()) {
                addOpening(feature, pieces, all);
            } else {
                all.add(candidate(feature, pieces, microJoints(path, planned), why(pieces), List.of()));
            }
        }
        if (feature.isOpening() && tooLarge(feature)) {
            addJointed(feature, path, all);
        }
    }

    private boolean tooLarge(Feature feature) {
        return new SlugCheck(feature.contour(), feature.angleDeg()).largestSideMm(Areas.of(feature.contour())) > fallsMm();
    }

    /** Outline with the slug falling or, where it is too large, nibbled away. */
    private void addOpening(Feature feature, List<Piece> pieces, List<Candidate> all) {
        SlugCheck check = new SlugCheck(feature.contour(), feature.angleDeg());
        Geometry loose = check.loose(pieces);
        if (check.largestSideMm(loose) <= fallsMm()) {
            all.add(candidate(feature, pieces, List.of(), why(pieces), List.of()));
            return;
        }
        for (UsableTool filling : fillers(pieces)) {
            List<PartHit> fill = new Filler(job.rules(), guard).hits(loose, feature.angleDeg(), filling);
            List<Piece> more = new ArrayList<>(pieces);
            if (!fill.isEmpty() && check.largestSideMm(check.loose(added(feature, more, filling, fill))) <= fallsMm()) {
                all.add(candidate(feature, added(feature, more, filling, fill), List.of(),
                        why(pieces) + "; the inside is nibbled away", List.of()));
            }
        }
    }

    private static List<Piece> added(Feature feature, List<Piece> pieces, UsableTool tool, List<PartHit> hits) {
        List<Piece> all = new ArrayList<>();
        boolean merged = false;
        for (Piece p : pieces) {
            List<PartHit> both = new ArrayList<>(p.hits());
            if (p.tool() == tool) {
                both.addAll(hits);
                merged = true;
            }
            all.add(Pieces.of(feature, p.tool(), both));
        }
        if (!merged) {
            all.add(Pieces.of(feature, tool, hits));
        }
        return all;
    }

    /** Rectangular tools of the outline, and the largest one usable. */
    private List<UsableTool> fillers(List<Piece> pieces) {
        List<UsableTool> all = new ArrayList<>(pieces.stream().map(Piece::tool).filter(UsableTool::rectangular).toList());
        tools.stream().filter(UsableTool::rectangular).max(Comparator.comparingDouble(UsableTool::areaMm2))
                .filter(t -> !all.contains(t)).ifPresent(all::add);
        return all;
    }

    /** Outline with the slug held by joints and taken out by hand. */
    private void addJointed(Feature feature, EdgePath path, List<Candidate> all) {
        List<List<Double>> held = JointPlan.spread(path.segments(), SLUG_JOINTS);
        if (held.stream().mapToInt(List::size).sum() < SLUG_JOINTS) {
            return;
        }
        for (List<Piece> pieces : outlines.cuts(feature, path, held)) {
            SlugCheck check = new SlugCheck(feature.contour(), feature.angleDeg());
            double side = check.largestSideMm(check.loose(pieces));
            Candidate c = candidate(feature, pieces, microJoints(path, held), why(pieces) + "; the slug stays on joints",
                    List.of(Finding.at(feature.center(), ToolingReason.SLUG_BY_HAND, subject(feature), side, fallsMm())));
            all.add(new Candidate(feature, c.pieces(), c.joints(), c.seconds() + job.machine().times().partRemovalS(), c.wear(),
                    c.reachMm(), c.why(), c.notes()));
        }
    }

    private double fallsMm() {
        return Math.min(job.rules().maxSlugMm(), job.machine().dropOpeningMm());
    }

    private List<MicroJoint> microJoints(EdgePath path, List<List<Double>> planned) {
        List<MicroJoint> all = new ArrayList<>();
        for (int i = 0; i < path.segments().size(); i++) {
            Segment s = path.segments().get(i);
            for (double at : planned.get(i)) {
                Point p = s.pointAt(at / s.lengthMm());
                all.add(new MicroJoint(p, job.rules().microJointMm()));
            }
        }
        return all;
    }

    String subject(Feature feature) {
        return FeatureNames.subject(job.features().part(), feature);
    }

    private static String why(List<Piece> pieces) {
        int hits = pieces.stream().mapToInt(p -> p.hits().size()).sum();
        return "cut in " + hits + (hits == 1 ? " hit" : " hits") + " along its edge";
    }

    private Candidate candidate(Feature feature, List<Piece> pieces, List<MicroJoint> micro, String why, List<Finding> notes) {
        double seconds = 0;
        double wear = 0;
        double reach = 0;
        for (Piece p : pieces) {
            seconds += time.seconds(p.hits());
            wear += p.tool().wearPerHit() * p.hits().size();
            for (PartHit h : feature.isOpening() ? List.<PartHit>of() : p.hits()) {
                reach = Math.max(reach, guard.reachMm(p.tool().footprint(), h));
            }
        }
        return new Candidate(feature, pieces, micro, seconds, wear, reach, why, notes);
    }
}
