// SPDX-License-Identifier: EPL-2.0
/**
 * Holding of the sheet: clamps, repositions and turns.
 *
 * <p>Purpose: every hit must be made while the sheet is held, out of reach of no axis and under no clamp. Input:
 * {@link punchwright.engine.holding.HoldingJob}. Result: {@link punchwright.engine.holding.HoldingPlan}, the fewest clamp
 * arrangements found and which hits are made in each. Entry: {@link punchwright.engine.holding.HoldingPlanner}.
 *
 * <p>Frame: u runs along the carriage, and the tool axis reaches u = 0 to the X travel. A holding is the sheet x that lies at
 * the carriage's zero. Clamps are set once on the carriage and keep their u through all repositions, so that a plan needs no
 * clamp that moves by itself. A hit is a set of allowed carriage positions (its reach less what each clamp forbids), and the
 * fewest holdings are the fewest points that meet every set: found by branching on the outermost open hit for clamp settings
 * from evenly spread ones outward, the count by reach alone as the bound; what sampled settings leave open on small jobs is
 * settled exactly, clamps and positions at once, as a system of difference constraints.
 *
 * <p>Measured by: brute force on small random cases, the reposition formula, and an independent check of every plan.
 */
package punchwright.engine.holding;
