// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;
import java.util.Set;

/** The hits of one tool within a candidate. */
record Piece(UsableTool tool, OperationKind kind, List<PartHit> hits) {

    Piece {
        hits = List.copyOf(hits);
    }

    /** Adds the set-ups the piece needs: the tool, with its angle where the tool cannot turn. */
    void addSetups(Set<String> all) {
        int order = ToolFootprint.symmetryOrder(tool.tool());
        if (tool.turning() && tool.tool().freedom() == AngleFreedom.ANY) {
            all.add(tool.id());
        } else if (order == 0) {
            all.add(tool.id() + "@0.0");
        } else {
            hits.forEach(h -> all.add(tool.id() + "@" + AngleFit.canonicalDeg(h.angleDeg(), order)));
        }
    }
}
