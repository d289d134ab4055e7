// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

import org.locationtech.jts.geom.Geometry;

import punchwright.engine.feature.Feature;
import punchwright.engine.feature.FeatureKind;
import punchwright.engine.geometry.Point;
import punchwright.engine.geometry.Segment;

/**
 * Makes the candidates of one feature: exact hits, outlines cut segment by segment with the slug falling, nibbled away or held by
 * joints, forms. A guard says what harms the part. What the scene knows already is not made again.
 */
final class Ways {

    private static final int SLUG_JOINTS = 2;
    /** Outlines weighed where one hit makes the opening. */
    private static final int FEW = 4;

    private final ToolingJob job;
    private final List<UsableTool> tools;
    private final WaysMemory.Scene scene;
    private final Feature feature;
    private final PartGuard guard;
    private final HitTime time;
    private final OutlineCutter outlines;
    private final List<MicroJoint> keep;
    private final ExactHit exact;

    /** {@code keep}: joints of other edges that no hit may cut. */
    Ways(ToolingJob job, List<UsableTool> tools, WaysMemory.Scene scene, HitTime time, List<MicroJoint> keep) {
        this.scene = scene;
        feature = scene.feature();
        this.keep = keep;
        this.job = job;
        this.tools = tools;
        guard = scene.guard();
        this.time = time;
        outlines = new OutlineCutter(job.rules(), tools, scene, time);
        exact = new ExactHit(job.rules());
    }

    /** Cheapest first. {@code joints}: middles of micro-joints on a straight outer edge, mm from its start. */
    List<Candidate> of(List<Double> joints) {
        List<Candidate> all = new ArrayList<>();
        boolean form = feature.kind() == FeatureKind.FORM;
        for (UsableTool t : tools) {
            all.addAll(scene.oneHit(t, () -> form ? formed(t) : exact(t)));
        }
        if (!form) {
            addOutlines(joints, all);
        }
        all.sort(Comparator.comparingDouble((Candidate c) -> c.cost(time.weights())).thenComparing(c -> c.setups().toString()));
        return List.copyOf(all);
    }

    /** Whether there is one at all, with as little work as that takes. */
    boolean any(List<Double> joints) {
        boolean form = feature.kind() == FeatureKind.FORM;
        if (tools.stream().anyMatch(t -> !scene.oneHit(t, () -> form ? formed(t) : exact(t)).isEmpty())) {
            return true;
        }
        return !form && (anyOutline(joints, 1) || anyOutline(joints, OutlineCutter.MOST));
    }

    private boolean anyOutline(List<Double> joints, int most) {
        EdgePath path = EdgePath.of(feature, guard.shape());
        List<List<Double>> planned = planned(path, joints);
        for (WaysMemory.Cut cut : outlines.cuts(feature, path, planned, most)) {
            if (!ofCut(cut, path, planned).isEmpty()) {
                return true;
            }
        }
        List<Candidate> held = new ArrayList<>();
        if (most > 1 && heldByJoints()) {
            addJointed(path, held);
        }
        return !held.isEmpty();
    }

    private List<Candidate> formed(UsableTool t) {
        OptionalDouble angle = FormHits.fits(feature, t.tool(), job.rules().sizeToleranceMm())
                ? AngleFit.angleDeg(t.tool(), t.turning(), feature.angleDeg()) : OptionalDouble.empty();
        if (angle.isEmpty()) {
            return List.of();
        }
        List<PartHit> hits = FormHits.of(feature, t.tool(), angle.getAsDouble(), job.thicknessMm());
        return made(List.of(Pieces.of(feature, t, hits)), List.of(), Loose.NONE, "forming tool of this kind and size"
                + (hits.size() > 1 ? ", " + hits.size() + " hits" : ""));
    }

    private List<Candidate> exact(UsableTool t) {
        return exact.find(feature, t.tool(), t.turning()).map(h -> single(t, h, "one hit makes it")).orElse(List.of());
    }

    private List<Candidate> single(UsableTool t, PartHit hit, String why) {
        return made(List.of(Pieces.of(feature, t, List.of(hit))), List.of(), Loose.NONE, why);
    }

    private void addOutlines(List<Double> joints, List<Candidate> all) {
        EdgePath path = EdgePath.of(feature, guard.shape());
        List<List<Double>> planned = planned(path, joints);
        for (WaysMemory.Cut cut : outlines.cuts(feature, path, planned, all.isEmpty() ? OutlineCutter.MOST : FEW)) {
            all.addAll(ofCut(cut, path, planned));
        }
        if (heldByJoints()) {
            addJointed(path, all);
        }
    }

    private static List<List<Double>> planned(EdgePath path, List<Double> joints) {
        List<List<Double>> planned = new ArrayList<>();
        path.segments().forEach(s -> planned.add(List.of()));
        planned.set(0, joints);
        return planned;
    }

    private List<Candidate> ofCut(WaysMemory.Cut cut, EdgePath path, List<List<Double>> planned) {
        List<UsableTool> fillers = feature.isOpening() ? fillers(cut.pieces()) : List.of();
        return cut.candidates(fillers, () -> feature.isOpening() ? opening(cut.pieces(), fillers)
                : made(cut.pieces(), microJoints(path, planned), Loose.NONE, why(cut.pieces())));
    }

    private boolean heldByJoints() {
        return feature.isOpening() && slugs().largestSideMm(Areas.of(feature.contour())) > fallsMm();
    }

    private SlugCheck slugs() {
        return new SlugCheck(feature.contour(), feature.angleDeg(), job.rules().scallopMm());
    }

    /** Outline with the slug falling or, where it is too large, nibbled away; slivers are nibbled away in both. */
    private List<Candidate> opening(List<Piece> pieces, List<UsableTool> fillers) {
        SlugCheck check = slugs();
        Geometry loose = check.loose(pieces);
        if (check.largestSideMm(loose) <= fallsMm()) {
            return withoutSlivers(pieces, fillers, check, check.slivers(loose, leastWidthMm()), why(pieces));
        }
        List<Candidate> all = new ArrayList<>();
        for (UsableTool filling : fillers) {
            List<PartHit> fill = new Filler(job.rules(), guard).hits(loose, feature.angleDeg(), filling);
            List<Piece> more = Pieces.added(feature, pieces, filling, fill);
            Geometry left = check.loose(more);
            if (!fill.isEmpty() && check.largestSideMm(left) <= fallsMm()) {
                all.addAll(withoutSlivers(more, fillers(more), check, check.slivers(left, leastWidthMm()),
                        why(pieces) + "; the inside is nibbled away"));
            }
        }
        return all;
    }

    private List<Candidate> withoutSlivers(List<Piece> pieces, List<UsableTool> fillers, SlugCheck check, Geometry slivers,
            String why) {
        List<Piece> best = pieces;
        for (UsableTool filling : slivers.isEmpty() ? List.<UsableTool>of() : fillers) {
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
        return made(best, List.of(), new Loose(0, thin ? slivers.getNumGeometries() : 0), why);
    }

    /** Rectangular tools of the outline, and the largest one usable. */
    private List<UsableTool> fillers(List<Piece> pieces) {
        List<UsableTool> fillers = new ArrayList<>(pieces.stream().map(Piece::tool).filter(UsableTool::rectangular).toList());
        tools.stream().filter(UsableTool::rectangular).max(Comparator.comparingDouble(UsableTool::areaMm2))
                .filter(t -> !fillers.contains(t)).ifPresent(fillers::add);
        return fillers;
    }

    /** Outline with the slug held by joints and taken out by hand. */
    private void addJointed(EdgePath path, List<Candidate> all) {
        List<List<Double>> held = JointPlan.spread(path.segments(), SLUG_JOINTS);
        if (held.stream().mapToInt(List::size).sum() < SLUG_JOINTS) {
            return;
        }
        for (WaysMemory.Cut cut : outlines.cuts(feature, path, held, OutlineCutter.MOST)) {
            all.addAll(cut.candidates(List.of(), () -> jointed(path, held, cut.pieces())));
        }
    }

    private List<Candidate> jointed(EdgePath path, List<List<Double>> held, List<Piece> pieces) {
        SlugCheck check = slugs();
        double side = check.largestSideMm(check.loose(pieces));
        return made(pieces, microJoints(path, held), new Loose(side, 0), why(pieces) + "; the slug stays on joints");
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

    /** The candidate; none where it cuts a joint. */
    private List<Candidate> made(List<Piece> pieces, List<MicroJoint> joints, Loose loose, String why) {
        if (cutsAJoint(pieces, joints) || cutsAJoint(pieces, keep)) {
            return List.of();
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
        return List.of(new Candidate(feature, pieces, joints, seconds, wear, reach, loose, why));
    }
}
