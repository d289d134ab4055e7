// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.ArrayList;
import java.util.List;

import punchwright.engine.feature.Feature;

/** Names what a run of hits is. */
final class Pieces {

    /** Up to this many hits an opening counts as made by several single hits. */
    private static final int FEW = 4;

    private Pieces() {
    }

    static Piece of(Feature feature, UsableTool tool, List<PartHit> hits) {
        OperationKind kind = kind(feature, tool, hits.size());
        HitRole role = switch (kind) {
            case SLITTING -> HitRole.SLIT;
            case NIBBLING -> HitRole.NIBBLE;
            case FORMING -> HitRole.FORM;
            default -> HitRole.PIERCE;
        };
        return new Piece(tool, kind, hits.stream().map(h -> new PartHit(h.at(), h.angleDeg(), role)).toList());
    }

    /** The pieces with more hits of one tool. */
    static List<Piece> added(Feature feature, List<Piece> pieces, UsableTool tool, List<PartHit> hits) {
        List<Piece> all = new ArrayList<>();
        boolean merged = false;
        for (Piece p : pieces) {
            List<PartHit> both = new ArrayList<>(p.hits());
            if (p.tool() == tool) {
                both.addAll(hits);
                merged = true;
            }
            all.add(of(feature, p.tool(), both));
        }
        if (!merged && !hits.isEmpty()) {
            all.add(of(feature, tool, hits));
        }
        return all;
    }

    private static OperationKind kind(Feature feature, UsableTool tool, int hits) {
        if (tool.tool().shape().forms()) {
            return OperationKind.FORMING;
        }
        if (hits == 1 && feature.isOpening()) {
            return OperationKind.SINGLE;
        }
        if (tool.rectangular() && !feature.isOpening()) {
            return OperationKind.SLITTING;
        }
        return hits <= FEW ? hits == 1 ? OperationKind.SINGLE : OperationKind.SEVERAL : OperationKind.NIBBLING;
    }
}
