// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;
import java.util.TreeSet;

import punchwright.engine.feature.Feature;
import punchwright.engine.finding.Finding;

/**
 * One way to make a feature.
 *
 * @param feature   what is made
 * @param pieces    with which tools and hits
 * @param joints    micro-joints it leaves
 * @param seconds   press time of its hits, with moves between them, without tool changes
 * @param wear      cost of wear, currency
 * @param reachMm   how far its hits reach beyond the outer contour
 * @param why       in a short sentence
 * @param notes     what is worth knowing
 */
record Candidate(Feature feature, List<Piece> pieces, List<MicroJoint> joints, double seconds, double wear, double reachMm,
        String why, List<Finding> notes) {

    Candidate {
        pieces = List.copyOf(pieces);
        joints = List.copyOf(joints);
        notes = List.copyOf(notes);
    }

    int hits() {
        return pieces.stream().mapToInt(p -> p.hits().size()).sum();
    }

    /** Tool set-ups it needs: the tool, with its angle where the tool cannot turn. */
    TreeSet<String> setups() {
        TreeSet<String> all = new TreeSet<>();
        for (Piece piece : pieces) {
            int order = ToolFootprint.symmetryOrder(piece.tool().tool());
            boolean free = piece.tool().turning() && piece.tool().tool().freedom() == AngleFreedom.ANY;
            piece.hits().forEach(h -> all.add(piece.tool().tool().id()
                    + (free ? "" : "@" + AngleFit.canonicalDeg(h.angleDeg(), order))));
        }
        return all;
    }

    /** Cost in seconds of the machine without tool changes. */
    double cost(ChoiceWeights weights) {
        return seconds + wear * 3600 / weights.ratePerHour() + reachMm * weights.reachSecondsPerMm();
    }
}
