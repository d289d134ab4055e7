// SPDX-License-Identifier: EPL-2.0
/**
 * Planning: one order on one machine, from part shapes to proven, timed sheets.
 *
 * <p>Input: {@link punchwright.engine.planning.PlanRequest} (machine, tools, holders, parts with quantities, stock, rules).
 * Result: {@link punchwright.engine.planning.EnginePlan}, one sheet job for each material and thickness, with every
 * stage's own result inside and all findings.
 *
 * <p>Algorithm: the stages in their one direction. Where a stage refuses, the planner decides what to try next: parts are
 * first laid out with webs as wide as one cut, so that neighbours share it; when the proof refuses that layout (a joint
 * of one part cut away by its neighbour, say), they are laid out again with a strip of skeleton between the cuts. The
 * first proven attempt is taken; with none, the attempt with the fewest errors, and its errors are the plan's findings.
 * Why: sharing a cut saves material and hits, and the proof is the only judge that knows whether it held.
 *
 * <p>Measured by: every order of the demo shop is proven on at least one machine; same request, same plan.
 */
package punchwright.engine.planning;
