// SPDX-License-Identifier: EPL-2.0
/**
 * Purpose: from loose lines and arcs to closed contours, open chains and part shapes.
 * Input: pieces (one entity each) in mm. Result: {@link punchwright.engine.drawing.contour.ContourSet}.
 * Way: end points closer than the tolerance become one node (grid of cells, union of sets); pieces without length and
 * pieces that lie on another are dropped; ends that lead nowhere are peeled off as open chains; what is left with two ends
 * at each node is a loop; busier knots give their outer boundary. Loops that lie on each other count once. Nesting depth
 * (a point inside, rays against exact arcs) tells parts from holes. Arcs are never flattened for this.
 * Why nodes and not a walk from end to end: a walk depends on the order of the file, nodes do not.
 * Measured by: the comparison of loops, areas and lengths with an independent reader over real drawings (tests).
 */
package punchwright.engine.drawing.contour;
