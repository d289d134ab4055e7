// SPDX-License-Identifier: EPL-2.0
package punchwright.engine.drawing.contour;

import java.util.List;

import punchwright.engine.geometry.Point;

/**
 * Pieces after cleaning: the graph of the open ones, those whose ends are one node, the gaps closed, and where duplicates
 * were dropped, and the length in mm of those among them that differ by more than the last digits.
 */
record Edges(ChainGraph graph, List<Piece> closed, List<Gap> gaps, List<Point> duplicates,
        double nearDuplicatesMm) {
}
