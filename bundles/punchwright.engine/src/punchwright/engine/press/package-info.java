// SPDX-License-Identifier: EPL-2.0
/**
 * Press physics and manufacturing rules.
 *
 * <p>Purpose: the numbers a process engineer looks up before the first hit: force, stripping, work, clearance, smallest
 * features, webs, scallops, tool life, forming, general tolerances. Input: plain numbers, a {@link
 * punchwright.engine.press.Material} or a {@link punchwright.engine.press.Machine}. Result: a number from a formula class, or
 * an {@link punchwright.engine.press.Answer} of a {@link punchwright.engine.press.Calculation} with every figure on the way,
 * its formula in symbols, source and findings. Outside a formula's range the answer carries a finding and never a silent
 * number. Algorithm: closed formulas and small tables; every class names symbols, range, worked example and source, and where
 * two published rules differ both stand side by side and the material says which one is used. Measured by: worked examples from
 * the named books and pages, seeded sweeps against independent formulas, a table that fails when a formula has neither, and the
 * formula texts worked out by an evaluator of their own.
 */
package punchwright.engine.press;
