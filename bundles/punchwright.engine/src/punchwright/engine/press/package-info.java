// SPDX-License-Identifier: EPL-2.0
/**
 * Press physics and manufacturing rules.
 *
 * <p>Purpose: the numbers a process engineer looks up before the first hit: force, stripping, work, clearance, smallest
 * features, webs, scallops, tool life, general tolerances. Input: plain numbers, a {@link punchwright.engine.press.Material}
 * or a {@link punchwright.engine.press.Machine}. Result: a number, or a {@link punchwright.engine.press.Figure} that
 * carries the number with its unit, formula, source and findings. Outside a formula's range the figure carries a finding
 * and never a silent number. Algorithm: closed formulas and small tables; every class names its source, and where two
 * published rules differ both stand side by side and the material says which one is used. Measured by: worked examples
 * from the named books and pages, and sweeps against independent formulas.
 */
package punchwright.engine.press;
