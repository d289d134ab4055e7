// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.locationtech.jts.geom.Geometry;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Makes the candidates of one feature: exact hits, outlines cut segment by segment with the slug falling, nibbled away or held by
 * joints, forms. A guard says what harms the part.
 */
final class Ways {

    private static final int SLUG_JOINTS = 2;
    /** Outlines weighed where one hit makes the opening. */
    private static final int FEW = 4;

    private final ToolingJob job;
    private final List<UsableTool> tools;
    private final PartGuard guard;
    private final HitTime time;
    private final OutlineCutter outlines;
    private final List<MicroJoint> keep;
    private final ExactHit exact;
    private final List<Candidate> all = new ArrayList<>();

    /** {@code keep}: joints of other edges that no hit may cut. */
    Ways(ToolingJob job, List<UsableTool> tools, PartGuard guard, HitTime time, List<MicroJoint> keep) {
        this.keep = keep;
        this.job = job;
        this.tools = tools;
        this.guard = guard;
        this.time = time;
        outlines = new OutlineCutter(job.rules(), tools, guard, time);
        exact = new ExactHit(job.rules());
    }

    /** Cheapest first. {@code joints}: middles of micro-joints on a straight outer edge, mm from its start. */
    List<Candidate> of(Feature feature, List<Double> joints) {
        if (feature.kind() == FeatureKind.FORM) {
            addForms(feature);
        } else {
            addExact(feature);
            addOutlines(feature, joints);
        }
        all.sort(Comparator.comparingDouble((Candidate c) -> c.cost(time.weights())).thenComparing(c -> c.setups().toString()));
        return List.copyOf(all);
    }

    private void addForms(Feature feature) {
        for (UsableTool t : tools) {
            boolean fits = t.tool().shape().forms() && t.tool().shape().name().equalsIgnoreCase(feature.form())
                    && Math.abs(t.tool().lengthMm() - feature.lengthMm()) <= job.rules().sizeToleranceMm() + 1e-9
                    && Math.abs(t.tool().widthMm() - feature.widthMm()) <= job.rules().sizeToleranceMm() + 1e-9;
            if (fits) {
                AngleFit.angleDeg(t.tool(), t.turning(), feature.angleDeg()).ifPresent(a -> add(feature,
                        List.of(Pieces.of(feature, t, List.of(new PartHit(feature.center(), a, HitRole.FORM)))), List.of(),
                        Loose.NONE,
                        "forming tool of this kind and size"));
            }
        }
    }

    private void addExact(Feature feature) {
        for (UsableTool t : tools) {
            Optional<PartHit> hit = exact.find(feature, t.tool(), t.turning());
            hit.ifPresent(h -> add(feature, List.of(Pieces.of(feature, t, List.of(h))), List.of(), Loose.NONE,
                    "one hit makes it"));
        }
    }

    private void addOutlines(Feature feature, List<Double> joints) {
        EdgePath path = EdgePath.of(feature, guard.shape());
        List<List<Double>> planned = new ArrayList<>();
        path.segments().forEach(s -> planned.add(List.of()));
        planned.set(0, joints);
        for (List<Piece> pieces : outlines.cuts(feature, path, planned, all.isEmpty() ? OutlineCutter.MOST : FEW)) {
            if (feature.isOpening()) {
                addOpening(feature, pieces);
            } else {
                add(feature, pieces, microJoints(path, planned), Loose.NONE, why(pieces));
            }
        }
        if (feature.isOpening() && slugs(feature).largestSideMm(Areas.of(feature.contour())) > fallsMm()) {
            addJointed(feature, path);
        }
    }

    private SlugCheck slugs(Feature feature) {
        return new SlugCheck(feature.contour(), feature.angleDeg(), job.rules().scallopMm());
    }

    /** Outline with the slug falling or, where it is too large, nibbled away; slivers are nibbled away in both. */
    private void addOpening(Feature feature, List<Piece> pieces) {
        SlugCheck check = slugs(feature);
        Geometry loose = check.loose(pieces);
        if (check.largestSideMm(loose) <= fallsMm()) {
            addWithoutSlivers(feature, pieces, check, check.slivers(loose, leastWidthMm()), why(pieces));
            return;
        }
        for (UsableTool filling : fillers(pieces)) {
            List<PartHit> fill = new Filler(job.rules(), guard).hits(loose, feature.angleDeg(), filling);
            List<Piece> more = Pieces.added(feature, pieces, filling, fill);
            Geometry left = check.loose(more);
            if (!fill.isEmpty() && check.largestSideMm(left) <= fallsMm()) {
                addWithoutSlivers(feature, more, check, check.slivers(left, leastWidthMm()),
                        why(pieces) + "; the inside is nibbled away");
            }
        }
    }

    private void addWithoutSlivers(Feature feature, List<Piece> pieces, SlugCheck check, Geometry slivers, String why) {
        List<Piece> best = pieces;
        for (UsableTool filling : slivers.isEmpty() ? List.<UsableTool>of() : fillers(pieces)) {
            List<Piece> more = pieces;
            for (int i = 0; i < slivers.getNumGeometries(); i++) {
                more = Pieces.added(feature, more, filling,
                        new Filler(job.rules(), guard).hits(slivers.getGeometryN(i), feature.angleDeg(), filling));
            }
            if (best == pieces && check.slivers(check.loose(more), leastWidthMm()).isEmpty()) {
                best = more;
            }
        }
        boolean thin = best == pieces && !slivers.isEmpty();
        add(feature, best, List.of(), new Loose(0, thin ? slivers.getNumGeometries() : 0), why);
    }

    /** Rectangular tools of the outline, and the largest one usable. */
    private List<UsableTool> fillers(List<Piece> pieces) {
        List<UsableTool> fillers = new ArrayList<>(pieces.stream().map(Piece::tool).filter(UsableTool::rectangular).toList());
        tools.stream().filter(UsableTool::rectangular).max(Comparator.comparingDouble(UsableTool::areaMm2))
                .filter(t -> !fillers.contains(t)).ifPresent(fillers::add);
        return fillers;
    }

    /** Outline with the slug held by joints and taken out by hand. */
    private void addJointed(Feature feature, EdgePath path) {
        List<List<Double>> held = JointPlan.spread(path.segments(), SLUG_JOINTS);
        if (held.stream().mapToInt(List::size).sum() < SLUG_JOINTS) {
            return;
        }
        for (List<Piece> pieces : outlines.cuts(feature, path, held, OutlineCutter.MOST)) {
            SlugCheck check = slugs(feature);
            double side = check.largestSideMm(check.loose(pieces));
            add(feature, pieces, microJoints(path, held), new Loose(side, 0), why(pieces) + "; the slug stays on joints");
        }
    }

    private double leastWidthMm() {
        return Math.max(1, job.thicknessMm());
    }

    private double fallsMm() {
        return Math.min(job.rules().maxSlugMm(), job.machine().dropOpeningMm());
    }

    private List<MicroJoint> microJoints(EdgePath path, List<List<Double>> planned) {
        List<MicroJoint> joints = new ArrayList<>();
        for (int i = 0; i < path.segments().size(); i++) {
            Segment s = path.segments().get(i);
            for (double at : planned.get(i)) {
                Point p = s.pointAt(at / s.lengthMm());
                joints.add(new MicroJoint(p, job.rules().microJointMm()));
            }
        }
        return joints;
    }

    private static String why(List<Piece> pieces) {
        int hits = pieces.stream().mapToInt(p -> p.hits().size()).sum();
        return "cut in " + hits + (hits == 1 ? " hit" : " hits") + " along its edge";
    }

    private static boolean cutsAJoint(List<Piece> pieces, List<MicroJoint> joints) {
        return joints.stream().anyMatch(j -> pieces.stream().anyMatch(p -> p.hits().stream()
                .anyMatch(h -> p.tool().footprint().covers(h, j.at(), j.widthMm() / 2 - 0.01))));
    }

    private void add(Feature feature, List<Piece> pieces, List<MicroJoint> joints, Loose loose, String why) {
        if (cutsAJoint(pieces, joints) || cutsAJoint(pieces, keep)) {
            return;
        }
        double seconds = loose.slugByHandMm() > 0 ? job.machine().times().partRemovalS() : 0;
        double wear = 0;
        double reach = 0;
        for (Piece p : pieces) {
            seconds += time.seconds(p.hits());
            wear += p.tool().wearPerHit() * p.hits().size();
            for (PartHit h : feature.isOpening() ? List.<PartHit>of() : p.hits()) {
                reach = Math.max(reach, guard.reachMm(p.tool().footprint(), h));
            }
        }
        all.add(new Candidate(feature, pieces, joints, seconds, wear, reach, loose, why));
    }
}
