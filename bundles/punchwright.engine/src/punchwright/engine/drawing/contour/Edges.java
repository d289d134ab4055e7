// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.List;

/**
 * Pieces after cleaning: the graph of the open ones, those whose ends are one node, the widest gap closed in mm, and how many duplicates
 * were dropped.
 */
record Edges(ChainGraph graph, List<Piece> closed, double widestGapMm, int duplicates) {
}
