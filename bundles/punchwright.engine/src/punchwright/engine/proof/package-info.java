// SPDX-License-Identifier: EPL-2.0
/**
 * Is the plan true? An independent simulation of one sheet.
 *
 * <p>Input: {@link punchwright.engine.proof.ProofJob}: hits, tool records, clamps, machine, material and the drawing on the
 * sheet; nothing else that the planner knows. Result: proven, or typed findings with places.
 *
 * <p>Algorithm: each closed edge of each part gets two tracks, one on the waste side that the strokes must cover and one on
 * the part's side that they must not touch; both lie at the tolerance. Strokes are exact regions (lines and circles) whose
 * sections with the tracks are computed in closed form. Edges of equal form with equal strokes are looked at once. What holds
 * together is decided on areas (JTS): sheet less parts less cuts, joined by the uncut stretches. All other checks are plain
 * comparisons. Why: exact sections are fast and need no robust overlay of thousands of polygons.
 *
 * <p>Measured by: seeded corruptions of good plans, of which every harmful one must be caught and no good plan refused.
 */
package punchwright.engine.proof;
