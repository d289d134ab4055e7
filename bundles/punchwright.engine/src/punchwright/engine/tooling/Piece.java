// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.tooling;

import java.util.List;

/** The hits of one tool within a candidate. */
record Piece(UsableTool tool, OperationKind kind, List<PartHit> hits) {

    Piece {
        hits = List.copyOf(hits);
    }
}
