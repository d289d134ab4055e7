// SPDX-License-Identifier: EPL-2.0
/**
 * The arithmetic of the choice of tools, without tools: tasks, options, set-ups that are shared, seats that are short.
 *
 * <p>Purpose: which option each task takes and which seat each set-up gets, for the least cost. Input:
 * {@link punchwright.engine.tooling.setup.SetupProblem}. Result: a choice, its cost and a bound that no choice undercuts. Entry:
 * {@link punchwright.engine.tooling.setup.SetupSolver#solve}. Algorithm: options that another one of the same task beats are
 * dropped and alike tasks joined; prices on shared set-ups, seats and limits (Lagrange multipliers, subgradient steps) give a
 * bound, a local search a good choice; what the bound rules out is dropped, and what is left is solved as an integer program by
 * ojAlgo. Why: the prices alone leave a gap of about half a per cent, the integer program alone is too slow for an order;
 * together they prove nearly all. Work is limited by steps, never by the clock. Measured by: brute force on random small cases,
 * and the benchmark {@code choice} against three libraries.
 */
package punchwright.engine.tooling.setup;
