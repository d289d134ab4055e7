// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;
import java.util.TreeSet;

import punchwright.engine.feature.Feature;
import punchwright.engine.geometry.Point;

/**
 * One way to make a feature.
 *
 * @param feature       what is made
 * @param pieces        with which tools and hits
 * @param joints        micro-joints it leaves
 * @param seconds       press time of its hits, with moves between them, without tool changes
 * @param wear          cost of wear, currency
 * @param reachMm       how far its hits reach beyond the outer contour
 * @param loose         what it leaves loose in the opening
 * @param why           in a short sentence
 * @param each          the same for each member of a unit that is made one by one; empty otherwise
 */
record Candidate(Feature feature, List<Piece> pieces, List<MicroJoint> joints, double seconds, double wear, double reachMm,
        Loose loose, String why, List<Candidate> each) {

    Candidate(Feature feature, List<Piece> pieces, List<MicroJoint> joints, double seconds, double wear, double reachMm,
            Loose loose,
            String why) {
        this(feature, pieces, joints, seconds, wear, reachMm, loose, why, List.of());
    }

    Candidate {
        pieces = List.copyOf(pieces);
        joints = List.copyOf(joints);
        each = List.copyOf(each);
    }

    int hits() {
        return pieces.stream().mapToInt(p -> p.hits().size()).sum();
    }

    /** Tool set-ups it needs: the tool, with its angle where the tool cannot turn. */
    TreeSet<String> setups() {
        TreeSet<String> all = new TreeSet<>();
        pieces.forEach(p -> p.addSetups(all));
        return all;
    }

    /** Cost in seconds of the machine without tool changes. */
    double cost(ChoiceWeights weights) {
        return seconds + wear * 3600 / weights.ratePerHour() + reachMm * weights.reachSecondsPerMm()
                + loose.slivers() * weights.sliverSeconds() + qualitySeconds();
    }

    /** What dies that do not fit cost, in seconds. */
    private double qualitySeconds() {
        return pieces.stream().mapToDouble(p -> p.hits().size() * p.tool().qualitySeconds()).sum();
    }

    /** The same for a congruent feature elsewhere on the part. */
    Candidate movedTo(Feature other) {
        Point by = other.center().minus(feature.center());
        List<Piece> moved = pieces.stream().map(p -> new Piece(p.tool(), p.kind(), p.hits().stream()
                .map(h -> new PartHit(h.at().plus(by), h.angleDeg(), h.role())).toList())).toList();
        List<MicroJoint> held = joints.stream().map(j -> new MicroJoint(j.at().plus(by), j.widthMm())).toList();
        return new Candidate(other, moved, held, seconds, wear, reachMm, loose, why);
    }

    boolean clear(PartGuard guard) {
        return pieces.stream().allMatch(p -> guard.clear(p.tool().footprint(), p.hits()));
    }
}
