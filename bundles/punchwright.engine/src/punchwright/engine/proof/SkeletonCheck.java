// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

import punchwright.engine.geometry.Point;
import punchwright.engine.holding.ClampArrangement;
import punchwright.engine.proof.EdgeCheck.RingState;
import punchwright.engine.proof.RingResult.Gap;
import punchwright.engine.proof.RingResult.Loose;

/**
 * What still holds together at the end. The sheet less all parts and all cuts falls into pieces of skeleton; each uncut
 * stretch of a part's outline joins the part to the piece beyond it. Parts must hang, over any number of joints, on the
 * metal in the clamps; pieces that hang on nothing are loose waste.
 */
final class SkeletonCheck {

    private record BlobKey(RingForm form, RingResult result) {
    }

    private final ProofJob job;
    private final HoldingCheck holding;
    private final Joints joints;
    private final Report report;
    private final Map<BlobKey, Geometry> blobs = new HashMap<>();
    private final Groups groups;
    private final List<RingState> outlines;
    private List<Geometry> pieces = List.of();
    private PieceFinder finder;

    SkeletonCheck(ProofJob job, HoldingCheck holding, Joints joints, List<RingState> states, Report report) {
        this.job = job;
        this.holding = holding;
        this.joints = joints;
        this.report = report;
        this.outlines = states.stream().filter(s -> !s.ring().form().opening()).toList();
        this.groups = new Groups();
    }

    void run(List<Stroke> strokes, Rings rings) {
        pieces = skeleton(strokes, rings);
        finder = new PieceFinder(pieces);
        outlines.forEach(this::join);
        Set<Integer> held = held();
        reportWaste(held);
        for (RingState s : outlines) {
            if (s.result().gaps().isEmpty()) {
                cutFree(s, rings, strokes);
            } else if (!held.contains(groups.of(partNode(s)))) {
                report.add(ProofReason.PART_LOOSE, middle(s), part(s), s.ring().part() + 1);
            }
        }
    }

    private List<Geometry> skeleton(List<Stroke> strokes, Rings rings) {
        List<Geometry> cut = new ArrayList<>();
        Set<Integer> used = new HashSet<>();
        for (RingState s : outlines) {
            cut.add(AffineTransformation.translationInstance(s.ring().anchorX(), s.ring().anchorY()).transform(blob(s)));
            s.strokes().forEach(k -> used.add(k.turn()));
        }
        for (Stroke s : strokes) {
            if (s.cuts() && !used.contains(s.turn()) && inSkeleton(s, rings)) {
                cut.add(s.areaAbout(0, 0));
            }
        }
        Geometry sheet = Punch.FACTORY.toGeometry(new Envelope(0, job.sheetLengthMm(), 0, job.sheetWidthMm()));
        Geometry left = cut.isEmpty() ? sheet
                : OverlayNGRobust.overlay(sheet, OverlayNGRobust.union(cut), OverlayNG.DIFFERENCE);
        List<Geometry> found = new ArrayList<>();
        for (int i = 0; i < left.getNumGeometries(); i++) {
            found.add(left.getGeometryN(i));
        }
        return found;
    }

    /** Outside every outline. */
    private static boolean inSkeleton(Stroke s, Rings rings) {
        return rings.near(s.box()).stream().noneMatch(r -> !r.form().opening() && r.contains(s.x(), s.y()));
    }

    private Geometry blob(RingState s) {
        return blobs.computeIfAbsent(new BlobKey(s.ring().form(), s.result()), k -> {
            List<Geometry> all = new ArrayList<>();
            all.add(s.ring().form().toWaste());
            s.strokes().forEach(t -> all.add(t.areaAbout(s.ring().anchorX(), s.ring().anchorY())));
            return OverlayNGRobust.union(all);
        });
    }

    private void join(RingState s) {
        for (Gap gap : s.result().gaps()) {
            int piece = finder.at(gap.stub().x + s.ring().anchorX(), gap.stub().y + s.ring().anchorY());
            if (piece >= 0) {
                groups.join(piece, partNode(s));
            }
        }
    }

    private int partNode(RingState s) {
        return -1 - s.ring().part();
    }

    /** Groups with metal in the clamps of the last holding. */
    private Set<Integer> held() {
        Set<Integer> held = new HashSet<>();
        if (job.holdings().isEmpty()) {
            return held;
        }
        ClampArrangement last = job.holdings().getLast();
        for (double center : last.clampCentersMm()) {
            Geometry clamp = Punch.FACTORY.toGeometry(holding.clampBox(center, last.turned()));
            for (int i = 0; i < pieces.size(); i++) {
                if (pieces.get(i).getEnvelopeInternal().intersects(clamp.getEnvelopeInternal()) && pieces.get(i)
                        .intersects(clamp)) {
                    held.add(groups.of(i));
                }
            }
        }
        return held;
    }

    private void reportWaste(Set<Integer> held) {
        Set<Integer> withParts = new HashSet<>();
        outlines.forEach(s -> withParts.add(groups.of(partNode(s))));
        for (int i = 0; i < pieces.size(); i++) {
            int group = groups.of(i);
            Loose piece = held.contains(group) || withParts.contains(group) ? null : LoosePieces.of(pieces.get(i));
            if (piece != null) {
                LooseReport.add(report, job, piece, new Point(piece.at().x, piece.at().y), "skeleton");
            }
        }
    }

    /** A part without joints: it must be finished when its last cut frees it. */
    private void cutFree(RingState s, Rings rings, List<Stroke> strokes) {
        if (joints.anyOn(s.ring())) {
            return;
        }
        int freed = freeingTurn(s);
        for (Stroke later : strokes) {
            if (later.turn() > freed && later.box().intersects(s.ring().box(0)) && s.ring().contains(later.x(), later.y())) {
                report.add(ProofReason.LOOSE_EARLY, later.at(), later.name(), s.ring().part() + 1, strokes.get(freed).hit().id(),
                        later.hit().id());
                return;
            }
        }
        Envelope b = s.ring().box(0);
        report.add(ProofReason.PART_FALLS, middle(s), part(s), s.ring().part() + 1, Math.max(b.getWidth(), b.getHeight()),
                job.machine().dropOpeningMm());
    }

    private static int freeingTurn(RingState s) {
        List<Integer> turns = s.strokes().stream().map(Stroke::turn).sorted().toList();
        int low = 0;
        int high = turns.size() - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            int turn = turns.get(middle);
            if (RingCheck.cutFree(s.ring(), s.strokes().stream().filter(k -> k.turn() <= turn).toList())) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return turns.isEmpty() ? -1 : turns.get(low);
    }

    private static String part(RingState s) {
        return "part " + (s.ring().part() + 1);
    }

    private static Point middle(RingState s) {
        Coordinate c = s.ring().form().polygon().getInteriorPoint().getCoordinate();
        return new Point(c.x + s.ring().anchorX(), c.y + s.ring().anchorY());
    }

    /** Joined nodes: pieces from 0 up, parts from -1 down. */
    private static final class Groups {
        private final Map<Integer, Integer> up = new HashMap<>();

        int of(int node) {
            int n = node;
            while (up.containsKey(n)) {
                n = up.get(n);
            }
            return n;
        }

        void join(int a, int b) {
            int ga = of(a);
            int gb = of(b);
            if (ga != gb) {
                up.put(gb, ga);
            }
        }
    }
}
