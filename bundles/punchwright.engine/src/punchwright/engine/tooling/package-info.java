// SPDX-License-Identifier: EPL-2.0
/**
 * The choice of tools.
 *
 * <p>Purpose: which tools of the shop make each feature of the parts of an order, with which hits, and where they sit on the
 * machine. Entry: {@link punchwright.engine.tooling.OrderChoice} for all parts that run with one set-up, their places with them;
 * {@link punchwright.engine.tooling.ToolChoice} for one part alone, with its ways side by side;
 * {@link punchwright.engine.tooling.ToolLoading} for the places of tools that are chosen. Input: features, material, thickness,
 * machine, tools, holders, shop rules ({@link punchwright.engine.tooling.ToolingJob}), and what stands ready. Result: operations
 * and findings ({@link punchwright.engine.tooling.OperationList}), places ({@link punchwright.engine.tooling.Loading}).
 * Algorithm: each tool is first held against force, size, life and clearance; each feature gets candidates (one exact hit, or its
 * edge cut segment by segment from the waste side by rectangular, round and corner tools); every hit is checked against the
 * part's area, so that no candidate harms the part; one candidate a feature is then chosen for the least press time, wear, web
 * and making ready together, by an integer program over the order with a bound that says how good the choice is. Measured by:
 * the union of hits against the drawn part with an independent geometry library, hit counts of published formulas, and brute
 * force on small cases.
 */
package punchwright.engine.tooling;
