// SPDX-License-Identifier: EPL-2.0
/**
 * Parts along bars: the cutting-stock problem in one dimension, with several bars, their costs and quantities on hand.
 *
 * <p>Input: {@link punchwright.engine.nesting.bars.BarProblem}, lengths as integers with the web added. Result:
 * {@link punchwright.engine.nesting.bars.BarPlan}, patterns with runs, their cost and a lower bound on it. Entry:
 * {@link punchwright.engine.nesting.bars.BarSearch}.
 *
 * <p>Algorithm: the linear program over all patterns, columns made as they are needed by a bounded knapsack (Gilmore and
 * Gomory, Operations Research 9, 1961, and 11, 1963); branches on the number of bars of each kind; whole patterns by rounding
 * down and solving what is left again. The bound is the Lagrangian one of the knapsacks at the prices found, so that it holds
 * whatever the rounding of the linear program. Why not one large integer program: its bound is weak and its size grows with
 * the length of the bars.
 *
 * <p>Measured by: published cases, an exhaustive search over all demands of small ones, and the share of seeded random cases
 * whose cost meets the bound.
 */
package punchwright.engine.nesting.bars;
